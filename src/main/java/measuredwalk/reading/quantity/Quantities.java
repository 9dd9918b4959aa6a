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
	 * Whether a word is a unit of time or length that is written in full or with two
	 * letters or more: 'minutes', 'mins', 'yds'.
	 * @param word lower case
	 * @return true when it is
	 */
	public static boolean measuresWalks(String word) {
		Unit unit = (word.length() > 1) ? Lexicon.unitNamed(word) : null;
		return unit != null && (unit.is(Dimension.TIME) || unit.is(Dimension.LENGTH));
	}

	/**
	 * Finds every quantity, in order, none over another.
	 * @param tokens the text's tokens
	 * @param now the message's own time, by which 'half nine' is morning or evening
	 * @return what was found, each in its likeliest reading
	 */
	public static List<Quantity> in(List<Token> tokens, LocalDateTime now) {
		List<Quantity> found = new ArrayList<>();
		for (Match match : new QuantityScan(tokens, now).matches()) {
			found.add(match.quantity());
		}
		return found;
	}

	/**
	 * Finds every quantity in every reading that its words allow: '20m' is twenty minutes
	 * and twenty metres.
	 * @param tokens the text's tokens
	 * @param now the message's own time
	 * @return what was found, in order, the likeliest reading of each first
	 */
	public static List<Quantity> readings(List<Token> tokens, LocalDateTime now) {
		List<Quantity> found = new ArrayList<>();
		for (Match match : new QuantityScan(tokens, now).matches()) {
			found.add(match.quantity());
			found.addAll(match.others());
		}
		return found;
	}

}
