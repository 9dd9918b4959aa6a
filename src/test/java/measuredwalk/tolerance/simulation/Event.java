package measuredwalk.tolerance.simulation;

import java.util.function.Function;

/** What may befall a dog, with the ranges that its size and day are drawn from. */
enum Event {

	/**
	 * 20 to 45 % lost in half a year. Voluntary activity falls by 4.2 % a year of age in
	 * well dogs (Brown 2010), so this is a disease that runs much faster: a hard case on
	 * purpose.
	 */
	SLOW_DECLINE((luck) -> new Influence.SlowDecline(-Math.log(1 - luck.between(0.20, 0.45)) / 180)),

	/**
	 * 25 to 45 % lost overnight between days 60 and 130: less than a quarter drowns in
	 * the noise of days, more than a half is an emergency and not a walk's question. Late
	 * enough for the policy to have settled, early enough to see it recover its footing.
	 */
	SUDDEN_DROP(
			(luck) -> new Influence.SuddenDrop((int) luck.between(60, 131), -Math.log(1 - luck.between(0.25, 0.45)))),

	/**
	 * A gain of 20 to 45 %, full after 7 to 21 days: pain drugs show within weeks; the
	 * size is common practice, no source.
	 */
	DRUG_STARTED((luck) -> new Influence.DrugStarted((int) luck.between(40, 91), Math.log(luck.between(1.20, 1.45)),
			luck.between(7, 21))),

	/**
	 * 6 to 14 days of 15 to 35 % less: the length of ordinary heat waves; the depth is a
	 * guess.
	 */
	HEAT_WAVE((luck) -> new Influence.HeatWave((int) luck.between(50, 131), (int) luck.between(6, 15),
			-Math.log(1 - luck.between(0.15, 0.35)))),

	/**
	 * A swing of 8 to 15 % with the year: weather explains little of activity (Katz
	 * 2017), so it is small.
	 */
	SEASONS((luck) -> new Influence.Seasons(luck.between(0.08, 0.15), luck.between(0, 365)));

	private final Function<Luck, Influence> law;

	Event(Function<Luck, Influence> law) {
		this.law = law;
	}

	Influence draw(Luck luck) {
		return this.law.apply(luck);
	}

}
