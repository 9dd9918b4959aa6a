package measuredwalk.reading;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Set;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import static org.assertj.core.api.Assertions.assertThat;

/** Levels by the clinical rules, each source named in {@code LevelRules}. */
class EmergencyTests {

	private static final MessageReader READER = MessageReader.standard();

	private static Reading read(String text, String... medications) {
		return READER.read(new OwnerMessage(text, Question.ANY, LocalDateTime.of(2026, 3, 14, 18, 30), "Bracken",
				Set.of(medications)));
	}

	@ParameterizedTest
	@ValueSource(strings = { "lovely day, came home on three legs", "won't put her back foot down", "can't get up",
			"back legs gave way", "knuckling over on the left", "staggering like a drunk",
			"he collapsed but is fine now", "struggling to breathe", "her gums are white", "had a fit this morning",
			"retching and nothing comes up", "belly swollen tight as a drum", "heatstroke I think",
			"the bleeding won't stop", "he's screaming in pain", "can't pee", "he ate a whole bar of chocolate",
			"swallowed my ibuprofen", "gums pail as milk", "colapsed in the kitchen", "hes unable to stand",
			"she fainted yesterday but is eating her tea" })
	void anEmergencyIsSeenInAnyWording(String text) {
		Reading reading = read(text);
		assertThat(reading.level()).isEqualTo(Level.EMERGENCY);
		assertThat(reading.levelReasons()).isNotEmpty();
	}

	@ParameterizedTest
	@ValueSource(strings = { "no collapse, no seizures", "she hasn't collapsed", "the neighbour's dog had a seizure",
			"ring you if his gums go white?", "he had a seizure two years ago", "my mum collapsed, dog is fine",
			"she didn't eat the chocolate", "gums nice and pink" })
	void aDeniedPastFearedOrForeignEmergencyIsNone(String text) {
		assertThat(read(text).level()).isLessThan(Level.SAME_DAY);
	}

	@Test
	void everyEmergencyWordingEverMissedIsSeen() throws IOException {
		for (String text : Files.readAllLines(Path.of("fixtures", "reading", "emergency-wordings.txt"))) {
			assertThat(read(text).level()).as(text).isGreaterThanOrEqualTo(Level.SAME_DAY);
		}
	}

	@Test
	void noOrdinaryWordingRaisesAnAlarm() throws IOException {
		for (String text : Files.readAllLines(Path.of("fixtures", "reading", "ordinary-wordings.txt"))) {
			assertThat(read(text).level()).as(text).isLessThan(Level.SAME_DAY);
		}
	}

	@ParameterizedTest
	@CsvSource({ "off his food, nsaid", "was sick twice, nsaid", "runny poo, nsaid", "very dull today, nsaid",
			"drinking loads, nsaid", "leaking in his bed, anti-ngf", "wobbly, anti-ngf" })
	void aMedicineRaisesTheLevelToTheSameDay(String text, String medicine) {
		assertThat(read(text).level()).isEqualTo(Level.WATCH);
		assertThat(read(text, medicine).level()).isEqualTo(Level.SAME_DAY);
	}

	@ParameterizedTest
	@ValueSource(strings = { "black tarry poo", "not eaten for two days", "suddenly very lame", "her neck is very sore",
			"off his food, he is on meloxicam" })
	void theClinicIsCalledTheSameDay(String text) {
		assertThat(read(text).level()).isEqualTo(Level.SAME_DAY);
	}

	@ParameterizedTest
	@ValueSource(strings = { "a bit stiff", "worse than usual", "scuffing his back toes" })
	void whatIsAboveUsualIsWatched(String text) {
		assertThat(read(text).level()).isEqualTo(Level.WATCH);
	}

}
