package measuredwalk.reading.quantity;

import org.jspecify.annotations.Nullable;

/** Reads figures with a colon before a unit: '1:20 hours', '1:30 mins'. */
final class ColonFigures {

	private ColonFigures() {
	}

	/** The number in the unit that follows, or null when it is no such thing. */
	static @Nullable NumberPhrase hoursAndMinutes(Terms terms, int at) {
		String word = terms.word(at);
		int colon = isHourPoint(terms, at) ? word.indexOf('.') : word.indexOf(':');
		Unit unit = terms.unit(at + 1);
		if (!terms.isFigures(at) || colon < 0 || unit == null || !unit.is(Dimension.TIME) || terms.is(at + 1, "h")) {
			return null;
		}
		int second = word.indexOf(':', colon + 1);
		double whole = Figures.value(word.substring(0, colon));
		double parts = Figures.value(word.substring(colon + 1, second < 0 ? word.length() : second));
		double seconds = second < 0 ? 0 : Figures.value(word.substring(second + 1));
		return new NumberPhrase(whole + parts / 60 + seconds / 3600, at + 1, NumberPhrase.Style.FIGURES, false);
	}

	/** '1.30 hrs' is an hour and a half: nobody writes a decimal with a last zero. */
	private static boolean isHourPoint(Terms terms, int at) {
		String word = terms.word(at);
		int point = word.indexOf('.');
		Unit unit = terms.unit(at + 1);
		boolean zero = point > 0 && word.length() - point == 3 && word.endsWith("0") && word.charAt(point + 1) < '6'
				&& word.charAt(point + 1) != '5' && word.charAt(point + 1) != '0';
		return zero && unit != null && unit.name().equals("hour");
	}

}
