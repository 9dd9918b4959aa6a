package measuredwalk.conversations;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import measuredwalk.speech.Speaking;
import measuredwalk.speech.Speech;
import measuredwalk.speech.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.springframework.core.io.DefaultResourceLoader;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

/**
 * What Spanish-speaking owners read is plain. Measured by the reading ease of Fernandez
 * Huerta (1959, Medidas sencillas de lecturabilidad, Consigna 214, from memory): 206.84 -
 * 60 syllables a word - 1.02 words a sentence; 80 to 90 is easy, for a reader of about
 * eleven. Syllables are counted by vowels, where a weak vowel beside another is one with
 * it: common practice.
 */
class SpanishReadingEaseTests {

	private static final double EASY = 80;

	/** One message may hold a long word that has no short form, such as 'medicina'. */
	private static final double HARDEST_MESSAGE = 65;

	/** Shorter ones say too little for an index that counts sentences. */
	private static final int FEWEST_WORDS = 12;

	private static final int LONGEST_SENTENCE = 30;

	private static final Pattern SENTENCE_END = Pattern.compile("(?<=[.?!:])\\s+|\n");

	private static final Pattern SYLLABLE = Pattern.compile("[iuü]?[aeoáéó](?:[iuy](?![aeoáéó]))?|[iu][iuy]?|[íúy]",
			Pattern.CASE_INSENSITIVE);

	@Test
	void allThatIsSaidTogetherIsEasy() {
		assertThat(ease(String.join(" ", texts().toList()))).isGreaterThanOrEqualTo(EASY);
	}

	@ParameterizedTest
	@MethodSource("texts")
	void noSingleMessageIsMuchHarder(String text) {
		if (words(text).size() >= FEWEST_WORDS) {
			assertThat(ease(text)).isGreaterThanOrEqualTo(HARDEST_MESSAGE);
		}
		assertThat(SENTENCE_END.split(text)).allMatch((sentence) -> words(sentence).size() <= LONGEST_SENTENCE);
	}

	@ParameterizedTest
	@CsvSource({ "paseo, 3", "pata, 2", "bien, 1", "día, 2", "clínica, 3", "cuéntame, 3", "rígida, 3", "y, 1", "muy, 1",
			"ahora, 3", "veterinario, 5" })
	void syllablesAreCountedAsTheyAreSpoken(String word, int syllables) {
		assertThat(syllables(word)).isEqualTo(syllables);
	}

	@Test
	void theIndexIsWorkedOutAsPublished() {
		// 5 words of 9 syllables in one sentence.
		assertThat(ease("Hoy mi perra va bien.")).isCloseTo(206.84 - 60 * 6 / 5.0 - 1.02 * 5, offset(1e-9));
	}

	static Stream<String> texts() {
		return Speaking.as(new Speech("es", Units.KILOMETRES, false), SpanishReadingEaseTests::spanish);
	}

	private static Stream<String> spanish() {
		ConversationFiles files = new ConversationFiles(new DefaultResourceLoader(), "");
		Replies replies = Replies.read(files);
		Scripts scripts = Scripts.read(files);
		List<String> said = Arrays.stream(Phrase.values()).map(replies::say).toList();
		List<String> asked = Stream.of(CheckIns.WELCOME, CheckIns.AFTER_WALK, CheckIns.NEXT_MORNING, CheckIns.WEEKLY)
			.map(scripts::get)
			.flatMap((script) -> script.steps().stream())
			.flatMap((step) -> Stream.of(step.ask(), step.askAgain()))
			.toList();
		List<String> taught = LookingGuide.read(files)
			.lessons()
			.stream()
			.flatMap((lesson) -> Stream.of(lesson.text(), lesson.drawing()))
			.toList();
		return Stream.of(said, asked, taught, Ideas.read(files).ideas())
			.flatMap(List::stream)
			.map(SpanishReadingEaseTests::filled);
	}

	/** Every place is taken by a word of middling length. */
	private static String filled(String text) {
		return text.replaceAll("\\{\\w+}", "Canela").replaceAll("/\\w+", "").strip();
	}

	private static double ease(String text) {
		List<String> words = words(text);
		double syllables = words.stream().mapToInt(SpanishReadingEaseTests::syllables).sum();
		double sentences = SENTENCE_END.split(text).length;
		return 206.84 - 60 * syllables / words.size() - 1.02 * words.size() / sentences;
	}

	private static int syllables(String word) {
		Matcher each = SYLLABLE.matcher(word.replaceAll("(?<=[gq])u(?=[eiéí])", ""));
		int count = 0;
		while (each.find()) {
			count++;
		}
		return Math.max(1, count);
	}

	private static List<String> words(String text) {
		return Arrays.stream(text.toLowerCase(Locale.ROOT).split("\\s+"))
			.filter((word) -> word.chars().anyMatch(Character::isLetterOrDigit))
			.toList();
	}

}
