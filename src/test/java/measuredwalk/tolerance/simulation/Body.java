package measuredwalk.tolerance.simulation;

import java.util.List;

/**
 * One dog's body.
 *
 * @param typicalMinutes median tolerance of a fresh single walk when taken on
 * @param day the luck of its days, even on both sides of 0
 * @param carefulShift the {@link Insight#ALPHA}-quantile of that luck
 * @param dayMemory share of the day's quality that stays until tomorrow
 * @param signScatter logistic scale of a walk's first sign around the day's tolerance
 * @param fatigue how walks carry over
 * @param soreness how it pays for too much
 * @param usualStiffness chance of a stiff morning on an ordinary day
 * @param hides share of walks that it enjoys too much to show a sign
 */
record Body(double typicalMinutes, DayLaw day, double carefulShift, double dayMemory, double signScatter,
		Fatigue fatigue, Soreness soreness, double usualStiffness, double hides) {

	/** What is known before today's luck: everything but the news of the day. */
	Morning morning(BodyState state, List<Influence> influences, int day) {
		double shift = influences.stream().mapToDouble((influence) -> influence.logShift(day)).sum();
		double logMiddle = Math.log(this.typicalMinutes) + shift + state.fitness() + this.dayMemory * state.quality()
				- state.irritation() - state.flare().logShift();
		return new Morning(logMiddle, this.carefulShift, this.fatigue, state.lastLoad(), state.lastHour() - 24);
	}

	/**
	 * The next morning's state.
	 * @param state this morning's state
	 * @param innovation what was new in the quality of the day
	 * @param loads the day's loads
	 * @param flareLuck the luck of the night
	 * @return the state of tomorrow
	 */
	BodyState dayLater(BodyState state, double innovation, DayLoads loads, Luck flareLuck) {
		return new BodyState(Fitness.next(state.fitness(), loads.ratio()),
				this.dayMemory * state.quality() + innovation,
				this.soreness.irritationNext(state.irritation(), Math.max(1e-9, loads.ratio())),
				this.soreness.flareNext(state.flare(), loads.ratio(), flareLuck), loads.lastLoad(), loads.lastHour());
	}

}
