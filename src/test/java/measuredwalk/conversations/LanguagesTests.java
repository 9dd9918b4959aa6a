package measuredwalk.conversations;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

import measuredwalk.reading.MessageReader;
import measuredwalk.reading.OwnerMessage;
import measuredwalk.reading.Question;
import measuredwalk.reading.Reading;
import measuredwalk.signs.Sign;
import measuredwalk.signs.SignKind;
import measuredwalk.speech.Speaking;
import measuredwalk.speech.Speech;
import measuredwalk.speech.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.springframework.core.io.DefaultResourceLoader;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

/** What people read is the same in every language, in other words. */
class LanguagesTests {

	private static final ConversationFiles FILES = new ConversationFiles(new DefaultResourceLoader(), "");

	private static final Speech SPANISH = new Speech("es", Units.KILOMETRES, false);

	private static final Speech AMERICAN = new Speech("en-US", Units.MILES, false);

	private static final List<String> CONVERSATIONS = List.of(CheckIns.WELCOME, CheckIns.AFTER_WALK,
			CheckIns.NEXT_MORNING, CheckIns.WEEKLY);

	private final Replies replies = Replies.read(FILES);

	@TempDir
	private Path folder;

	private ConversationFiles copyWith(String file, String from, String to) throws IOException {
		Path packed = Path.of("conversations");
		try (Stream<Path> all = Files.walk(packed)) {
			for (Path each : all.toList()) {
				Path copy = this.folder.resolve(packed.relativize(each).toString());
				if (Files.isDirectory(each)) {
					Files.createDirectories(copy);
				}
				else {
					Files.copy(each, copy, StandardCopyOption.REPLACE_EXISTING);
				}
			}
		}
		Path changed = this.folder.resolve(file);
		String text = Files.readString(changed);
		assertThat(text).contains(from);
		Files.writeString(changed, text.replace(from, to));
		return new ConversationFiles(new DefaultResourceLoader(), this.folder.toString());
	}

	@Test
	void everyPhraseHasTheSamePlacesInBothLanguages() {
		Texts english = Texts.read(FILES);
		Texts spanish = Texts.read(FILES.in(Tongues.read(FILES).of("es").orElseThrow(), false));
		assertThat(spanish.phrases().keySet()).isEqualTo(english.phrases().keySet());
		english.phrases()
			.forEach((phrase, text) -> assertThat(Texts.places(spanish.phrases().get(phrase))).as(phrase.code())
				.isEqualTo(Texts.places(text)));
		english.words().forEach((group, words) -> {
			if (!group.equals(Texts.COURTESIES)) {
				assertThat(spanish.words().get(group).keySet()).as(group).isEqualTo(words.keySet());
			}
		});
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', quoteCharacter = '"', value = {
			"es/replies.yaml|  greeting: >-|  greetings: >-|'greeting' is missing; add it",
			"es/replies.yaml|El plan de {dog}|El plan|must have the places [dog, minutes, walks]",
			"es/replies.yaml|    vomiting: no vomitó|    vomitar: no vomitó|has no words for [vomiting] under words: denied",
			"es/after-walk.yaml|step: how-now|step: how-later|must have the same steps",
			"es/parts.yaml|  walks: |  walkies: |'walks' is missing; add it",
			"languages.yaml|units: miles|units: leagues|'units' must be km or miles",
			"es/looking.yaml|title: Cómo ver la cabeza baja|titel: x|'title' is missing; add it" })
	void whatIsMissingInALanguageStopsTheStartWithFileAndFix(String file, String from, String to, String complaint)
			throws IOException {
		ConversationFiles files = copyWith(file, from, to);
		assertThatExceptionOfType(ConversationFileProblem.class).isThrownBy(() -> {
			Replies.read(files);
			Scripts.read(files);
			LookingGuide.read(files);
		}).withMessageContaining(file.substring(file.indexOf('/') + 1)).withMessageContaining(complaint);
	}

	@Test
	void aFolderOfOnesOwnWithoutOtherLanguagesStillServes() throws IOException {
		ConversationFiles files = copyWith("ideas.yaml", "ideas:", "ideas:");
		Files.delete(this.folder.resolve("languages.yaml"));
		assertThat(Tongues.read(files).all()).singleElement();
		assertThat(Replies.read(files).say(Phrase.STOPPED, Map.of("dog", "Moss"))).startsWith("I will send nothing");
	}

	@Test
	void peopleInAmericaReadTheirOwnWords() {
		assertThat(Speaking.as(AMERICAN, () -> this.replies.word("denied", SignKind.SEIZURE))).isEqualTo("no seizure");
		assertThat(Speaking.as(AMERICAN, () -> this.replies.word("seen", SignKind.VOMITING)))
			.isEqualTo("threw up {how}");
		List<Lesson> lessons = Speaking.as(AMERICAN, () -> LookingGuide.read(FILES).lessons());
		assertThat(lessons).anySatisfy((lesson) -> assertThat(lesson.how()).contains("the leash points behind you"));
		assertThat(lessons).noneSatisfy((lesson) -> assertThat(lesson.text()).containsPattern("\\bleads?\\b"));
		assertThat(LookingGuide.read(FILES).lessons())
			.anySatisfy((lesson) -> assertThat(lesson.how()).contains("the lead points behind you"));
	}

	@Test
	void whoSaysVetReadsVet() {
		String english = Speaking.as(Speech.usual().saying(true),
				() -> this.replies.say(Phrase.SAME_DAY, Map.of("phone", "1", "what", "a limp")));
		assertThat(english).startsWith("Please call the vet today: 1.");
		String spanish = Speaking.as(SPANISH.saying(true),
				() -> this.replies.say(Phrase.SAME_DAY, Map.of("phone", "1", "what", "cojera")));
		assertThat(spanish).startsWith("Llama hoy al veterinario: 1.");
		assertThat(Stream.of(Phrase.values())
			.map((phrase) -> Speaking.as(SPANISH.saying(true), () -> this.replies.say(phrase)))).as("de el, a el")
			.noneMatch((text) -> text.matches("(?s).*\\b(?:de|a) el veterinario.*") || text.contains("clínica"));
	}

	@ParameterizedTest
	@CsvSource({ "1, 1 minuto", "20, 20 minutos", "2.5, '2,5 minutos'" })
	void figuresAreSaidAsTheLanguageSaysThem(double minutes, String words) {
		String figure = Speaking.as(SPANISH,
				() -> String.format(SPANISH.locale(), (minutes == Math.rint(minutes)) ? "%.0f" : "%.1f", minutes));
		assertThat(Speaking.as(SPANISH, () -> this.replies.part(Part.MINUTES, figure, minutes))).isEqualTo(words);
	}

	@ParameterizedTest
	@CsvSource({ "es-MX, es", "es, es", "en-US, en-US", "en, en-GB", "en-AU, en-GB" })
	void theLanguageOfAChatProgramIsAGuess(String code, String tag) {
		assertThat(Tongues.read(FILES).meantBy(code).map(Tongue::tag)).contains(tag);
		assertThat(Tongues.read(FILES).meantBy("cy")).isEmpty();
	}

	@ParameterizedTest
	@CsvSource({ "español, es", "Spanish please, es", "English, en-GB", "american english, en-US",
			"English (American words), en-US" })
	void aLanguageIsNamedInPlainWords(String words, String tag) {
		assertThat(Tongues.read(FILES).named(words).map(Tongue::tag)).contains(tag);
	}

	static Stream<String> conversations() {
		return CONVERSATIONS.stream();
	}

	/** An answer on a button means the same in either language. */
	@ParameterizedTest
	@MethodSource("conversations")
	void aChoiceIsReadTheSameInBothLanguages(String conversation) {
		Scripts scripts = Scripts.read(FILES);
		Script english = scripts.get(conversation);
		Script spanish = Speaking.as(SPANISH, () -> scripts.get(conversation));
		for (int step = 0; step < english.steps().size(); step++) {
			List<String> choices = english.steps().get(step).choices();
			boolean overall = english.steps().get(step).settles().contains(Slot.OVERALL);
			Question asked = overall ? Question.MORNING : english.reads();
			for (int choice = 0; choice < choices.size(); choice++) {
				String said = spanish.steps().get(step).choices().get(choice);
				assertThat(meaning(said, asked, "es")).as(said).isEqualTo(meaning(choices.get(choice), asked, "en"));
			}
		}
	}

	private static String meaning(String text, Question asked, String language) {
		Reading reading = MessageReader.standard()
			.read(new OwnerMessage(text, asked, LocalDateTime.of(2026, 3, 14, 18, 30), "Luna", Set.of(), language));
		Set<String> signs = new TreeSet<>();
		for (Sign sign : reading.signs()) {
			signs.add(sign.kind() + " " + sign.present() + " " + sign.severity());
		}
		return Arrays
			.asList(reading.walks(), signs, reading.overall(), reading.answer(), reading.noWalk(),
					reading.stiffMinutes(), reading.level())
			.toString();
	}

}
