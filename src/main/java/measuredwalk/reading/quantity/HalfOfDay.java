package measuredwalk.reading.quantity;

/** Which half of the day an hour is in. */
enum HalfOfDay {

	NONE, AM, PM, NOON, NIGHT;

	/**
	 * The hour of the day, from 0 to 23, that an hour from 0 to 23 means in this half.
	 */
	int hour(int told) {
		if (told > 12) {
			return told;
		}
		return switch (this) {
			case NONE -> told;
			case AM -> told % 12;
			case PM -> told % 12 + 12;
			case NOON -> told >= 10 ? told : told + 12;
			case NIGHT -> told == 12 ? 0 : told >= 5 ? told + 12 : told;
		};
	}

}
