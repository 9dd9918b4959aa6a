package measuredwalk.reading.lexicon;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

class LexiconTests {

	private static Lexicon lexicon(String... lines) {
		Lexicon lexicon = new Lexicon();
		lexicon.parse("nurse.txt", List.of(lines));
		return lexicon;
	}

	private static List<Mention> find(Lexicon lexicon, String text) {
		List<String> words = List.of(text.split(" "));
		int[][] symbols = words.stream().map(lexicon::symbolsOf).toArray(int[][]::new);
		int[] limits = words.stream().mapToInt((word) -> words.size()).toArray();
		return lexicon.find(symbols, limits);
	}

	@ParameterizedTest
	@ValueSource(strings = { "limp", "limps", "limped", "limping", "limpin" })
	void aPlainWordStandsForAllItsForms(String form) {
		assertThat(find(lexicon("[sign lameness]", "limp"), form)).hasSize(1);
	}

	@Test
	void aWordWithAnEqualSignStandsForItselfOnly() {
		assertThat(find(lexicon("[sign lameness]", "=sound"), "sounds")).isEmpty();
	}

	@ParameterizedTest
	@CsvSource({ "drag foot, 1", "drag his foot, 1", "drag the cat, 0" })
	void aWordWithAQuestionMarkMayBeMissing(String text, int found) {
		assertThat(find(lexicon("class his: his her", "[sign hind-limb-dragging]", "drag <his>? foot"), text))
			.hasSize(found);
	}

	@ParameterizedTest
	@CsvSource({ "put his left foot down, 1", "put the whole of that big foot down, 0", "put not foot down, 0" })
	void aGapSkipsThreeWordsButNoDenial(String text, int found) {
		Lexicon lexicon = lexicon("class barrier: =not", "[sign lameness]", "put .. foot down");
		assertThat(find(lexicon, text)).hasSize(found);
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', value = { "limp | line 1 | Put a heading", "[sing lameness] | line 1 | Use one of",
			"[sign lameness | line 1 | End it with ]", "class leg | line 1 | Write it as" })
	void aFaultNamesFileLineAndFix(String line, String place, String fix) {
		assertThatThrownBy(() -> lexicon(line)).isInstanceOf(LexiconError.class)
			.hasMessageContaining("nurse.txt")
			.hasMessageContaining(place)
			.hasMessageContaining(fix);
	}

	@ParameterizedTest
	@ValueSource(strings = { "get up| stand", "get up |stand", "|stand", "stand|", "stand||rise",
			"can not|could not|unable to stand" })
	void aListThatABlankHasCutIsAFault(String line) {
		assertThatThrownBy(() -> lexicon("[sign lameness]", line)).isInstanceOf(LexiconError.class)
			.hasMessageContaining("nurse.txt line 2")
			.hasMessageContaining("put the list in brackets");
	}

	@ParameterizedTest
	@CsvSource({ "leg was a bit funny, 1", "leg funny, 1", "leg then funny, 0" })
	void aWaveSkipsSmallWordsOnly(String text, int found) {
		assertThat(find(lexicon("class small: =was =a =bit", "[sign lameness]", "leg ~ funny"), text)).hasSize(found);
	}

	@Test
	void anUnknownClassIsAFault() {
		assertThatThrownBy(() -> lexicon("[sign lameness]", "drag <leg>")).hasMessageContaining("nurse.txt line 2")
			.hasMessageContaining("<leg>");
	}

	@Test
	void theLexiconInTheJarLoads() {
		assertThat(find(Lexicon.standard(), "limping")).isNotEmpty();
	}

}
