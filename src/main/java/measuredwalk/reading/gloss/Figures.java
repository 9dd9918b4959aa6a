package measuredwalk.reading.gloss;

/** Figures as much of the world writes them, with a comma before the tenths. */
final class Figures {

	private static final int THOUSANDS = 3;

	private Figures() {
	}

	/**
	 * The figures with a point before the tenths and no mark between thousands.
	 * @param figures such as {@code 1,5} or {@code 1.500}
	 * @return such as {@code 1.5} or {@code 1500}
	 */
	static String english(String figures) {
		int comma = figures.indexOf(',');
		if (comma > 0 && figures.indexOf(',', comma + 1) < 0 && figures.length() - comma - 1 < THOUSANDS) {
			return figures.replace(".", "").replace(',', '.');
		}
		int point = figures.indexOf('.');
		if (point > 0 && figures.indexOf('.', point + 1) < 0 && figures.length() - point - 1 == THOUSANDS
				&& figures.charAt(0) != '0') {
			return figures.replace(".", "");
		}
		return figures;
	}

}
