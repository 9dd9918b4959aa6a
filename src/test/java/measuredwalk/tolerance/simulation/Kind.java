package measuredwalk.tolerance.simulation;

import java.util.List;

/** The kinds of dog that are told apart in the figures. */
enum Kind {

	/** Nothing happens but days, flares and its own training. */
	STEADY(Sizes.MIDDLE, 1, 1, Sizes.SOMETIMES, List.of()),

	/** Gets worse week by week. */
	SLOW_DECLINE(Sizes.MIDDLE, 1, 1, Sizes.SOMETIMES, List.of(Event.SLOW_DECLINE)),

	/** Loses a quarter or more overnight. */
	SUDDEN_DROP(Sizes.MIDDLE, 1, 1, Sizes.SOMETIMES, List.of(Event.SUDDEN_DROP)),

	/**
	 * Flares three times as often: about one in a month, which clinics call frequent
	 * (common practice, no source).
	 */
	FLARING(Sizes.MIDDLE, 1, 3, Sizes.SOMETIMES, List.of()),

	/** Begins a pain drug that helps. */
	IMPROVING_DRUG(Sizes.MIDDLE, 1, 1, Sizes.SOMETIMES, List.of(Event.DRUG_STARTED)),

	/** Has its seasons and two heat waves. */
	SEASONAL(Sizes.MIDDLE, 1, 1, Sizes.SOMETIMES, List.of(Event.SEASONS, Event.HEAT_WAVE, Event.HEAT_WAVE)),

	/**
	 * Small and frail: a few minutes make the difference, and its days vary a quarter
	 * more.
	 */
	SMALL_FRAIL(Sizes.SHORT, 1.25, 1, Sizes.SOMETIMES, List.of()),

	/** Strong and stoic: long walks, and on most of them it shows nothing. */
	STRONG_STOIC(Sizes.LONG, 1, 1, Sizes.MOSTLY, List.of()),

	/**
	 * Young for an arthritic dog, with an owner who walks more than asked, above all at
	 * weekends.
	 */
	OVERACTIVE_OWNER(Sizes.MIDDLE, 1, 1, Sizes.SOMETIMES, List.of());

	private final Range typicalMinutes;

	private final double unsteadiness;

	private final double flareFactor;

	private final Range hides;

	private final List<Event> events;

	Kind(Range typicalMinutes, double unsteadiness, double flareFactor, Range hides, List<Event> events) {
		this.typicalMinutes = typicalMinutes;
		this.unsteadiness = unsteadiness;
		this.flareFactor = flareFactor;
		this.hides = hides;
		this.events = events;
	}

	Range typicalMinutes() {
		return this.typicalMinutes;
	}

	double unsteadiness() {
		return this.unsteadiness;
	}

	double flareFactor() {
		return this.flareFactor;
	}

	Range hides() {
		return this.hides;
	}

	List<Event> events() {
		return this.events;
	}

	/**
	 * Reasons: clinic handouts begin at 5 minutes for the frail and 10 for others; an
	 * hour is a long walk for an old dog.
	 */
	private static final class Sizes {

		static final Range SHORT = new Range(8, 16);

		static final Range MIDDLE = new Range(16, 45);

		static final Range LONG = new Range(45, 90);

		/** Most dogs are now and then too happy to show it. */
		static final Range SOMETIMES = new Range(0.10, 0.30);

		static final Range MOSTLY = new Range(0.50, 0.80);

	}

}
