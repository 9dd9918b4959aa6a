package measuredwalk.reading.quantity;

import org.jspecify.annotations.Nullable;

/** Reads figures with a colon: '1:20 hours', '1:30 mins', '51:20' by the watch. */
final class ColonFigures {

	private static final int LAST_HOUR = 24;

	private static final int MOST_MINUTES = 180;

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

	/**
	 * Minutes and seconds as a watch shows them, '51:20': no hour of the day is so high.
	 * @return the seconds, or -1 when it is no such thing
	 */
	static int minutesAndSeconds(Terms terms, int at) {
		String word = terms.word(at);
		int colon = word.indexOf(':');
		if (!terms.isFigures(at) || colon < 1 || word.length() != colon + 3 || terms.unit(at + 1) != null) {
			return -1;
		}
		int minutes = (int) Figures.value(word.substring(0, colon));
		int seconds = (int) Figures.value(word.substring(colon + 1));
		return minutes > LAST_HOUR && minutes <= MOST_MINUTES && seconds < 60 ? minutes * 60 + seconds : -1;
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
