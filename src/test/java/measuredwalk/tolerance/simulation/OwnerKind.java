package measuredwalk.tolerance.simulation;

/**
 * The kinds of owner. Chances of noticing are spread around the classes .3, .55 and .8 of
 * the tolerance notes without being equal to them; all are guesses, no source.
 */
enum OwnerKind {

	GOOD(new Range(0.70, 0.90), new Range(0.01, 0.02), new Range(0.08, 0.12), new Range(0.5, 0.7)),

	AVERAGE(new Range(0.50, 0.70), new Range(0.01, 0.03), new Range(0.08, 0.15), new Range(0.35, 0.6)),

	/** About .4: the poor observers of the tolerance notes. */
	POOR(new Range(0.30, 0.50), new Range(0.01, 0.03), new Range(0.10, 0.18), new Range(0.2, 0.4)),

	/** Answers, and never tells of a sign. */
	NEVER_REPORTS(Range.exactly(0), Range.exactly(0), new Range(0.10, 0.15), Range.exactly(0)),

	/** Sees well, and 8 % of what is told was nothing. */
	WORRIED(new Range(0.65, 0.85), Range.exactly(0.08), new Range(0.06, 0.10), new Range(0.4, 0.6)),

	/**
	 * Looks at the phone, walks as it comes, misses a third of the check-ins and mixes up
	 * amounts.
	 */
	CARELESS(new Range(0.35, 0.60), new Range(0.02, 0.04), new Range(0.20, 0.30), new Range(0.1, 0.3));

	private static final double CARELESS_SILENCE = 0.35;

	private static final double CARELESS_MISREADING = 2;

	private final Range sees;

	private final Range falseAlarms;

	private final Range scatter;

	private final Range tellsMinute;

	OwnerKind(Range sees, Range falseAlarms, Range scatter, Range tellsMinute) {
		this.sees = sees;
		this.falseAlarms = falseAlarms;
		this.scatter = scatter;
		this.tellsMinute = tellsMinute;
	}

	Owner draw(Kind kind, AnswerLaws answers, Luck luck) {
		double sees = this.sees.draw(luck);
		// A stiff morning lasts and is at home, so it is noticed a little more often.
		double mornings = (sees == 0) ? 0 : Math.min(0.95, sees + 0.15);
		Seeing seeing = new Seeing(sees, mornings, this.falseAlarms.draw(luck), luck.between(1, 5));
		Telling telling = new Telling(this.tellsMinute.draw(luck),
				answers.misread() * ((this == CARELESS) ? CARELESS_MISREADING : 1), answers.late());
		double missed = (this == CARELESS) ? Math.max(CARELESS_SILENCE, answers.missed()) : answers.missed();
		return new Owner(this, seeing, keeping(kind, luck), telling, answers.silence().draw(missed, luck));
	}

	private Keeping keeping(Kind kind, Luck luck) {
		double scatter = this.scatter.draw(luck);
		double turnsBack = luck.between(0.3, 0.7);
		if (kind == Kind.OVERACTIVE_OWNER) {
			return new Keeping(Math.log(luck.between(1.05, 1.25)), scatter, luck.between(1.3, 1.8), turnsBack, 0.02);
		}
		// Weekends ran at twice weekdays in one cohort (Lee 2021); a suggestion in hand
		// tames that.
		return new Keeping(luck.between(-0.05, 0.05), scatter, luck.between(1.0, 1.2), turnsBack, 0.05);
	}

}
