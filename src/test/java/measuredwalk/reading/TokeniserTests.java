package measuredwalk.reading;

import java.util.List;
import java.util.stream.Collectors;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static org.assertj.core.api.Assertions.assertThat;

class TokeniserTests {

	@ParameterizedTest
	@CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
			25min             | 25 min
			1h05              | 1 h 05
			2x10              | 2 x 10
			x2                | x 2
			15-20             | 15 - 20
			7.10              | 7.10
			7:10am            | 7:10 am
			23:59:28          | 23:59:28
			192.168.1.2       | 192 . 168 . 1 . 2
			1,200             | 1,200
			10,15,20          | 10 , 15 , 20
			.5 mile           | .5 mile
			£48               | £ 48
			30kg              | 30 kg
			20'               | 20 '
			20′               | 20 '
			5″                | 5 "
			2½                | 2 ½
			２５              | 25
			K9                | k9
			for20mins         | for 20 mins
			twenty-five       | twenty five
			11-ish            | 11 ish
			five'ish          | five ' ish
			4pm–5pm           | 4 pm - 5 pm
			didn’t            | didn't
			didnt             | didn't
			off-lead.         | off lead .
			café              | café
			""")
	void cutsWhatIsTypedInOnePiece(String text, String words) {
		assertThat(words(text)).isEqualTo(words);
	}

	@Test
	void composesCombiningMarks() {
		assertThat(words("cafe\u0301")).isEqualTo("café");
	}

	@Test
	void keepsAnEmojiInOneToken() {
		List<Token> tokens = Tokeniser.tokens("good 👍🏽👩‍🦰 dog");
		assertThat(tokens).extracting(Token::kind)
			.containsExactly(Token.Kind.WORD, Token.Kind.SYMBOL, Token.Kind.SYMBOL, Token.Kind.WORD);
	}

	@Test
	void makesOneBreakOfSeveralLineEnds() {
		assertThat(Tokeniser.tokens("one\r\n\n two")).extracting(Token::kind)
			.containsExactly(Token.Kind.WORD, Token.Kind.BREAK, Token.Kind.WORD);
	}

	@Test
	void saysWhereEachTokenStandsInTheOriginalText() {
		String text = "Walked ２５min, didnt limp";
		List<String> pieces = Tokeniser.tokens(text)
			.stream()
			.map((token) -> text.substring(token.start(), token.end()))
			.toList();
		assertThat(pieces).containsExactly("Walked", "２５", "min", ",", "didnt", "limp");
	}

	@Test
	void marksWhatIsJoinedToTheTokenBefore() {
		assertThat(Tokeniser.tokens("25min twenty-five a b")).extracting(Token::joined)
			.containsExactly(false, true, false, true, false, false);
	}

	@Test
	void cutsTwentyThousandCharacters() {
		assertThat(Tokeniser.tokens("25min ".repeat(3334))).hasSize(2 * 3334);
	}

	private static String words(String text) {
		return Tokeniser.tokens(text).stream().map(Token::word).collect(Collectors.joining(" "));
	}

}
