package measuredwalk.reading;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

import measuredwalk.reading.score.LabelledMessage;
import measuredwalk.reading.score.Scorecard;
import measuredwalk.reading.score.Scorecard.Field;
import measuredwalk.reading.score.Tally;
import measuredwalk.signs.LoadKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

import static org.assertj.core.api.Assertions.assertThat;

/** Spanish is read by its glossary, and its emergencies are seen in every household. */
class SpanishTests {

	private static final MessageReader READER = MessageReader.standard();

	private static final Path FIXTURES = Path.of("fixtures", "reading");

	private static final Scorecard DEVELOP = Scorecard.of(READER,
			LabelledMessage.read(FIXTURES.resolve("spanish-develop.jsonl")));

	private static Reading read(String text, Question question, String language) {
		return READER
			.read(new OwnerMessage(text, question, LocalDateTime.of(2026, 3, 14, 18, 30), "Luna", Set.of(), language));
	}

	@ParameterizedTest
	@CsvSource({ "FIRST_WALK_MINUTES, 0.99", "DISTANCE, 0.99", "SIGNS, 0.97", "DENIED_SIGNS, 0.95", "OVERALL, 0.95",
			"URGENT, 0.98", "NOT_UNDERSTOOD, 0.99" })
	void theMessagesThatItWasMadeOnAreReadAsLabelled(Field field, double least) {
		Tally tally = DEVELOP.tally(field);
		assertThat(tally.f1()).as(DEVELOP.failures().toString()).isGreaterThanOrEqualTo(least);
	}

	@ParameterizedTest
	@ValueSource(strings = { "es", "en" })
	void everyEmergencyWordingIsSeenWhateverTheHouseholdSpeaks(String language) throws IOException {
		for (String text : Files.readAllLines(FIXTURES.resolve("spanish-emergency-wordings.txt"))) {
			assertThat(read(text, Question.ANY, language).level()).as(text).isGreaterThanOrEqualTo(Level.SAME_DAY);
		}
	}

	@ParameterizedTest
	@ValueSource(strings = { "es", "en" })
	void noOrdinaryWordingRaisesAnAlarm(String language) throws IOException {
		for (String text : Files.readAllLines(FIXTURES.resolve("spanish-ordinary-wordings.txt"))) {
			assertThat(read(text, Question.ANY, language).level()).as(text).isLessThan(Level.SAME_DAY);
		}
	}

	@ParameterizedTest
	@MethodSource("emergenciesInEnglish")
	void anEnglishEmergencyIsSeenInASpanishHousehold(String text) {
		assertThat(read(text, Question.ANY, "es").level()).as(text).isGreaterThanOrEqualTo(Level.SAME_DAY);
	}

	static Stream<String> emergenciesInEnglish() throws IOException {
		return Files.readAllLines(FIXTURES.resolve("emergency-wordings.txt")).stream();
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', value = { "no|NO", "para nada|NO", "no, ninguna|NO", "sí|YES", "si, un poco|YES",
			"claro|YES", "no sé|UNSURE", "ni idea|UNSURE" })
	void yesAndNoAreRead(String text, Answer answer) {
		assertThat(read(text, Question.WALK, "es").answer()).isEqualTo(answer);
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', nullValues = "-",
			value = { "20 minutos cuesta arriba|HILLS", "30 min con muchas cuestas|HILLS",
					"20 minutos subiendo escaleras|STAIRS", "media hora por la playa, sobre la arena|ROUGH_GROUND",
					"25 minutos por el barro|ROUGH_GROUND", "15 minutos jugando con la pelota|PLAY",
					"paseo de 20 minutos y le tiramos la pelota|PLAY", "20 minutos con mucho calor|WARM_DAY",
					"20 minutos, hacía mucho calor|WARM_DAY", "20 minutos corriendo|FAST_PACE",
					"salimos a correr 20 minutos|FAST_PACE", "20 minutos a buen paso|FAST_PACE",
					"20 minutos, sin cuestas|-", "20 minutos, le costó levantarse|-", "20 minutos por el parque|-",
					"20 minutos, le cuesta subir al coche|-", "vino corriendo a la puerta|-" })
	void whatMadeAWalkHarderIsRead(String text, LoadKind load) {
		List<LoadKind> loads = read(text, Question.WALK, "es").loads()
			.stream()
			.filter(LoadTold::present)
			.map(LoadTold::kind)
			.toList();
		assertThat(loads).isEqualTo((load != null) ? List.of(load) : List.of());
	}

	@Test
	void anOrdinarySpanishMessageIsNotUnderstoodInAnEnglishHousehold() {
		Reading reading = read("caminó media hora y estaba bien", Question.WALK, "en");
		assertThat(reading.understood()).isFalse();
		assertThat(reading.walks()).isEmpty();
	}

	@Test
	void aSpanishHouseholdMayWriteEnglish() {
		Reading reading = read("25 minutes, limped a bit on the back left", Question.WALK, "es");
		assertThat(reading.walks().get(0).minutes()).isEqualTo(25);
		assertThat(reading.signs()).singleElement().satisfies((sign) -> assertThat(sign.present()).isTrue());
	}

	@Test
	void aDenialOfAWordThatIsNotKnownReachesNothingElse() {
		assertThat(read("tuvo un ataque y ahora no me reconoce", Question.ANY, "es").level())
			.isEqualTo(Level.EMERGENCY);
	}

}
