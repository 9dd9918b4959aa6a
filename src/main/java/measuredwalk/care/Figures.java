package measuredwalk.care;

import java.util.Locale;

/** Figures as people say them. */
final class Figures {

	private static final double METRES_IN_KILOMETRE = 1000;

	private Figures() {
	}

	static String minutes(double minutes) {
		return number(minutes) + ((Math.round(minutes * 10) == 10) ? " minute" : " minutes");
	}

	static String minutes(double low, double high) {
		return (Math.round(low) == Math.round(high)) ? minutes(Math.rint(low))
				: Math.round(low) + " to " + minutes(Math.rint(high));
	}

	static String walks(int walks) {
		return switch (walks) {
			case 1 -> "1 walk";
			default -> walks + " walks";
		};
	}

	static String distance(double metres) {
		return (metres < METRES_IN_KILOMETRE) ? Math.round(metres) + " metres"
				: number(metres / METRES_IN_KILOMETRE) + " km";
	}

	private static String number(double figure) {
		double rounded = Math.round(figure * 10) / 10.0;
		return (rounded == Math.rint(rounded)) ? String.valueOf((long) rounded)
				: String.format(Locale.ROOT, "%.1f", rounded);
	}

}
