package measuredwalk.messaging;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import static org.assertj.core.api.Assertions.assertThat;

class PartsTests {

	@Test
	void leavesAShortTextWhole() {
		assertThat(Parts.of("Twenty minutes.", 15)).containsExactly("Twenty minutes.");
	}

	@Test
	void splitsAtTheEndOfALineFirst() {
		assertThat(Parts.of("one two\nthree four", 12)).containsExactly("one two", "three four");
	}

	@Test
	void splitsAtTheEndOfAWordInALongLine() {
		assertThat(Parts.of("one two three four", 10)).containsExactly("one two", "three four");
	}

	@Test
	void cutsAWordThatIsTooLongButNeverACharacter() {
		String dogs = "\uD83D\uDC15".repeat(5);
		assertThat(Parts.of(dogs, 5)).allMatch((part) -> part.length() == 4 || part.length() == 2)
			.satisfies((parts) -> assertThat(String.join("", parts)).isEqualTo(dogs));
	}

	@ParameterizedTest
	@ValueSource(ints = { 2, 7, 40, 4096 })
	void losesNoWordWhateverTheLength(int longest) {
		String text = "Bracken walked 20 minutes.\nNo signs were seen, and the morning was good.\n".repeat(200).strip();
		List<String> parts = Parts.of(text, longest);
		assertThat(parts).allMatch((part) -> part.length() <= longest);
		assertThat(String.join("", parts).replaceAll("\\s", "")).isEqualTo(text.replaceAll("\\s", ""));
	}

}
