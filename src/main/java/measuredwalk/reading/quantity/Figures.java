package measuredwalk.reading.quantity;

import org.jspecify.annotations.Nullable;

/** Reads numbers in figures: 25, 2½, 10 1/2, 3/4, 40 000. */
final class Figures {

	private static final String SIGNS = "¼½¾⅓⅔⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞";

	private static final double[] SIGN_VALUES = { 1 / 4.0, 1 / 2.0, 3 / 4.0, 1 / 3.0, 2 / 3.0, 1 / 5.0, 2 / 5.0,
			3 / 5.0, 4 / 5.0, 1 / 6.0, 5 / 6.0, 1 / 8.0, 3 / 8.0, 5 / 8.0, 7 / 8.0 };

	/** Longer ones are no amounts, and in the end would not fit a double. */
	private static final int MOST_FIGURES = 24;

	private Figures() {
	}

	static @Nullable NumberPhrase at(Terms terms, int at) {
		if (!terms.isFigures(at) || terms.word(at).indexOf(':') >= 0 || terms.word(at).length() > MOST_FIGURES) {
			return null;
		}
		NumberPhrase fraction = fractionAt(terms, at);
		if (fraction != null) {
			return fraction;
		}
		double value = value(terms.word(at));
		NumberPhrase part = isWholeFigures(terms.word(at)) ? fractionAt(terms, at + 1) : null;
		if (part != null && part.value() < 1 && value < 1000) {
			return new NumberPhrase(value + part.value(), part.end(), NumberPhrase.Style.FIGURES, false);
		}
		return grouped(terms, at, value);
	}

	/** A fraction sign, or two whole numbers with a slash and a value below one. */
	static @Nullable NumberPhrase fractionAt(Terms terms, int at) {
		if (!terms.isFigures(at)) {
			return null;
		}
		int sign = SIGNS.indexOf(terms.word(at));
		if (terms.word(at).length() == 1 && sign >= 0) {
			return new NumberPhrase(SIGN_VALUES[sign], at + 1, NumberPhrase.Style.FRACTION, false);
		}
		if (!isSlashPair(terms, at)) {
			return null;
		}
		Unit unit = terms.unit(at + 3);
		boolean minutes = unit != null && unit.name().equals("minute") && value(terms.word(at + 2)) > 4;
		if (minutes) {
			return null;
		}
		double ratio = value(terms.word(at)) / value(terms.word(at + 2));
		return ratio < 1 ? new NumberPhrase(ratio, at + 3, NumberPhrase.Style.FRACTION, false) : null;
	}

	/** Two whole numbers in one piece with a slash, and no third. */
	static boolean isSlashPair(Terms terms, int at) {
		boolean pair = terms.is(at + 1, "/") && terms.glued(at + 2) && isWholeFigures(terms.word(at))
				&& isWholeFigures(terms.word(at + 2));
		return pair && !(terms.is(at + 3, "/") && terms.glued(at + 3) && terms.isFigures(at + 4))
				&& !(terms.glued(at) && terms.is(at - 1, "/"));
	}

	static boolean isWholeFigures(String word) {
		for (int at = 0; at < word.length(); at++) {
			if (word.charAt(at) < '0' || word.charAt(at) > '9') {
				return false;
			}
		}
		return !word.isEmpty();
	}

	/** The value of figures with commas and a point; 0 for signs. */
	static double value(String word) {
		int sign = word.length() == 1 ? SIGNS.indexOf(word) : -1;
		if (sign >= 0) {
			return SIGN_VALUES[sign];
		}
		double whole = 0;
		double scale = 0;
		for (int at = 0; at < word.length(); at++) {
			char figure = word.charAt(at);
			if (figure >= '0' && figure <= '9') {
				whole = whole * 10 + (figure - '0');
				scale *= 10;
			}
			else if (figure == '.') {
				scale = 1;
			}
		}
		return scale > 1 ? whole / scale : whole;
	}

	/** '40 000' is forty thousand, whatever kind of blank is between. */
	private static NumberPhrase grouped(Terms terms, int at, double value) {
		double total = value;
		int end = at + 1;
		if (isWholeFigures(terms.word(at)) && terms.word(at).length() <= 3 && value > 0) {
			while (terms.is(end, "000") && !terms.joined(end)) {
				total *= 1000;
				end++;
			}
		}
		return new NumberPhrase(total, end, NumberPhrase.Style.FIGURES, false);
	}

}
