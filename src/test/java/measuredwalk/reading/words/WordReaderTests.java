package measuredwalk.reading.words;

import java.util.ArrayList;
import java.util.List;

import measuredwalk.reading.lexicon.Lexicon;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static org.assertj.core.api.Assertions.assertThat;

class WordReaderTests {

	private static final WordReader READER = new WordReader(Lexicon.standard());

	private static String read(String text) {
		Words words = READER.read(text, "Limpet");
		List<String> forms = new ArrayList<>();
		for (int at = 0; at < words.size(); at++) {
			forms.add(words.form(at));
		}
		return String.join(" ", forms);
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', value = { "He's not | he is not", "didn't | did not", "won't | will not",
			"cannae | can not", "n | and", "bk left | back left", "sister's dog | sister dog", "R & L | r and l" })
	void writesShortFormsOut(String text, String words) {
		assertThat(read(text)).isEqualTo(words);
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', value = { "sniff at the lake | sniff at the lake", "Limpet ran | limpet ran",
			"with Limpley | with limpley", "15 nto 50 | 15 not 50" })
	void repairsOnlyWhatNoWordListKnows(String text, String words) {
		assertThat(read(text)).isEqualTo(words);
	}

}
