package measuredwalk.escalation;

import measuredwalk.signs.Coded;

/**
 * How keen the two charts of a dog's course are (docs/escalation.md): the fewer false
 * reviews, the later and the fewer real losses are noticed. The figures are those of
 * simulated dogs that the model doses, judging seeds; other dogs and owners, other
 * figures. The codes are stable, to be stored.
 */
public enum ReviewDesign implements Coded {

	/** Fewer reviews. */
	QUIETER(4320, 3.0, 0.4, 77, 19),

	/** About one false review a dog in half a year. */
	BALANCED(1080, 1.5, 0.8, 81, 10),

	/** As soon as there may be something. */
	KEENER(180, 1.0, 1.7, 84, 7);

	private final double burdenDays;

	private final double cutLimit;

	private final double falseReviews;

	private final int noticedInHundred;

	private final int medianDays;

	ReviewDesign(double burdenDays, double cutLimit, double falseReviews, int noticedInHundred, int medianDays) {
		this.burdenDays = burdenDays;
		this.cutLimit = cutLimit;
		this.falseReviews = falseReviews;
		this.noticedInHundred = noticedInHundred;
		this.medianDays = medianDays;
	}

	/**
	 * In-control run length of the chart of signs: the days told of until a false alarm,
	 * on average, for days that do not hang together.
	 * @return days
	 */
	public double burdenDays() {
		return this.burdenDays;
	}

	/**
	 * The limit of the chart of the believed tolerance.
	 * @return the sum at which it alarms, in logs
	 */
	public double cutLimit() {
		return this.cutLimit;
	}

	/**
	 * Reviews of steady dogs, flares among them, by either chart.
	 * @return how many a dog in 180 days
	 */
	public double falseReviews() {
		return this.falseReviews;
	}

	/**
	 * Of dogs that lost 25 to 45 percent overnight, those for which a review begins
	 * within 30 days.
	 * @return how many of a hundred
	 */
	public int noticedInHundred() {
		return this.noticedInHundred;
	}

	/**
	 * How soon it began for half of these.
	 * @return days
	 */
	public int medianDays() {
		return this.medianDays;
	}

}
