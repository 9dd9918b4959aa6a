package measuredwalk.conversations;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.springframework.core.io.DefaultResourceLoader;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

/**
 * What owners read is plain enough for somebody of eleven. Measured by the automated
 * readability index (Smith and Senter 1967, AMRL-TR-66-220, from memory): 4.71 letters a
 * word + 0.5 words a sentence - 21.43 gives the school grade, and grade 6 is an age of 11
 * to 12.
 */
class ReadingAgeTests {

	private static final double GRADE_OF_AGE_ELEVEN = 6;

	/** One message may hold a word that has no short form, such as 'medicine'. */
	private static final double HARDEST_MESSAGE = 8;

	/** Shorter ones say too little for an index that counts sentences. */
	private static final int FEWEST_WORDS = 12;

	private static final int LONGEST_SENTENCE = 30;

	private static final Pattern SENTENCE_END = Pattern.compile("(?<=[.?!:])\\s+|\n");

	@Test
	void allThatIsSaidTogetherIsForAReaderOfEleven() {
		assertThat(grade(String.join(" ", texts().toList()))).isLessThanOrEqualTo(GRADE_OF_AGE_ELEVEN);
	}

	@ParameterizedTest
	@MethodSource("texts")
	void noSingleMessageIsMuchHarder(String text) {
		if (words(text).size() >= FEWEST_WORDS) {
			assertThat(grade(text)).isLessThanOrEqualTo(HARDEST_MESSAGE);
		}
		assertThat(SENTENCE_END.split(text)).allMatch((sentence) -> words(sentence).size() <= LONGEST_SENTENCE);
	}

	@Test
	void theIndexIsWorkedOutAsPublished() {
		// 9 words of 35 letters in one sentence.
		assertThat(grade("The quick brown fox jumps over the lazy dog.")).isCloseTo(4.71 * 35 / 9 + 0.5 * 9 - 21.43,
				offset(1e-9));
	}

	static Stream<String> texts() {
		ConversationFiles files = new ConversationFiles(new DefaultResourceLoader(), "");
		Replies replies = Replies.read(files);
		Scripts scripts = Scripts.read(files);
		Stream<String> said = Arrays.stream(Phrase.values()).map(replies::say);
		Stream<String> asked = Stream.of(CheckIns.WELCOME, CheckIns.AFTER_WALK, CheckIns.NEXT_MORNING, CheckIns.WEEKLY)
			.map(scripts::get)
			.flatMap((script) -> script.steps().stream())
			.flatMap((step) -> Stream.of(step.ask(), step.askAgain()));
		Stream<String> taught = LookingGuide.read(files)
			.lessons()
			.stream()
			.flatMap((lesson) -> Stream.of(lesson.text(), lesson.drawing()));
		return Stream.of(said, asked, taught, Ideas.read(files).ideas().stream())
			.flatMap((each) -> each)
			.map(ReadingAgeTests::filled);
	}

	/** Every place is taken by a word of middling length. */
	private static String filled(String text) {
		return text.replaceAll("\\{\\w+}", "Thistle").replaceAll("/\\w+", "").strip();
	}

	private static double grade(String text) {
		List<String> words = words(text);
		long letters = words.stream()
			.mapToLong((word) -> word.chars().filter(Character::isLetterOrDigit).count())
			.sum();
		double sentences = SENTENCE_END.split(text).length;
		return 4.71 * letters / words.size() + 0.5 * words.size() / sentences - 21.43;
	}

	private static List<String> words(String text) {
		return Arrays.stream(text.toLowerCase(Locale.ROOT).split("\\s+"))
			.filter((word) -> word.chars().anyMatch(Character::isLetterOrDigit))
			.toList();
	}

}
