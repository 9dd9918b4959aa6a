package measuredwalk.reading;

import java.util.List;

/**
 * Cuts a message into tokens, in one pass over its characters. Safe for use by many
 * threads.
 * <p>
 * What is typed in one piece is cut where figures and letters meet: '25min' is '25',
 * 'min'; '1h05' is '1', 'h', '05'; '£48' is '£', '48'. A single letter before figures
 * stays with them ('K9'), except the x of 'x2'. A hyphen inside a compound makes no token
 * ('twenty-five', '30-minute', '11-ish'), one before figures does ('15-20').
 */
public final class Tokeniser {

	private Tokeniser() {
	}

	/**
	 * Cuts the text. Never throws on any text.
	 * @param text what the person typed, any Unicode, any length
	 * @return its tokens in order, without blanks
	 */
	public static List<Token> tokens(String text) {
		return new TokenScan(text).tokens();
	}

}
