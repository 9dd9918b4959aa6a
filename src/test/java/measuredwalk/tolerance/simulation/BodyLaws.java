package measuredwalk.tolerance.simulation;

/**
 * The ranges that dogs' bodies are drawn from in a world.
 *
 * @param heavyTailed whether days follow the harder law
 * @param daySpread standard deviation of the news of a day, in logs
 * @param passingScale logistic scale of what is gone tomorrow, in logs; unused when not
 * heavy-tailed
 * @param dayMemory share of the day's quality that stays until tomorrow
 * @param signScatter logistic scale of a walk's first sign around the day's tolerance
 * @param carriedShare share of a walk that is left at once after it
 * @param carriedHours hours after which half of that is gone
 * @param healing share of the irritation that heals in a day
 * @param irritationGain irritation per log of overload
 * @param flareChance chance in a day of a flare that comes by itself
 * @param flareAfterOverload chance of a flare after 1.5 times the tolerance
 * @param usualStiffness chance of a stiff morning on an ordinary day
 */
record BodyLaws(boolean heavyTailed, Range daySpread, Range passingScale, Range dayMemory, Range signScatter,
		Range carriedShare, Range carriedHours, Range healing, Range irritationGain, Range flareChance,
		Range flareAfterOverload, Range usualStiffness) {

	/**
	 * One log-normal tolerance a day that forgets yesterday and does not wobble between
	 * walks. A spread of 12 to 18 % gives the oracle the regret that the outside figures
	 * of the milder world leave room for. Flares come by themselves about twice in half a
	 * year (common practice, no source), recover, and are fed little by overload.
	 */
	static final BodyLaws MILDER = new BodyLaws(false, new Range(0.12, 0.18), Range.exactly(0), Range.exactly(0),
			new Range(0.02, 0.05), Range.exactly(0), Range.exactly(3), new Range(0.50, 0.75), new Range(0.4, 0.8),
			new Range(0.005, 0.015), new Range(0.05, 0.10), new Range(0.04, 0.10));

	/**
	 * Days that hang together (a third to two thirds of the quality stays, as weather,
	 * sleep and weekday do), with heavy tails. The total spread of 16 to 25 % brings the
	 * oracle near the regret of .26 of the harder outside world. Fatigue carries over as
	 * strongly as the tolerance notes assume, by another law. Overload is paid for.
	 */
	static final BodyLaws HARDER = new BodyLaws(true, new Range(0.11, 0.17), new Range(0.05, 0.09),
			new Range(0.30, 0.65), new Range(0.04, 0.08), new Range(0.2, 0.6), new Range(2, 5), new Range(0.50, 0.75),
			new Range(0.8, 1.6), new Range(0.010, 0.025), new Range(0.10, 0.20), new Range(0.05, 0.12));

	/**
	 * A level and one draw of luck a day, and nothing else that remembers: no fatigue, no
	 * irritation, and flares that only come by themselves. The first sign shows at the
	 * day's tolerance.
	 * @param daySpread standard deviation of the day's luck, in logs
	 */
	static BodyLaws simple(double daySpread) {
		return new BodyLaws(false, Range.exactly(daySpread), Range.exactly(0), Range.exactly(0), Range.exactly(0.001),
				Range.exactly(0), Range.exactly(3), Range.exactly(1), Range.exactly(0), new Range(0.005, 0.015),
				Range.exactly(0), new Range(0.04, 0.10));
	}

	BodyLaws withCarriedShare(double share) {
		return new BodyLaws(this.heavyTailed, this.daySpread, this.passingScale, this.dayMemory, this.signScatter,
				Range.exactly(share), this.carriedHours, this.healing, this.irritationGain, this.flareChance,
				this.flareAfterOverload, this.usualStiffness);
	}

	BodyLaws withUsualStiffness(Range stiffness) {
		return new BodyLaws(this.heavyTailed, this.daySpread, this.passingScale, this.dayMemory, this.signScatter,
				this.carriedShare, this.carriedHours, this.healing, this.irritationGain, this.flareChance,
				this.flareAfterOverload, stiffness);
	}

	Body draw(Kind kind, Luck luck) {
		double typical = kind.typicalMinutes().drawByRatio(luck);
		DayLaw day = day(kind.unsteadiness(), luck);
		double memory = this.dayMemory.draw(luck);
		double scatter = this.signScatter.draw(luck);
		Fatigue fatigue = new Fatigue(this.carriedShare.draw(luck), this.carriedHours.draw(luck));
		Soreness soreness = new Soreness(this.healing.draw(luck), this.irritationGain.draw(luck),
				kind.flareFactor() * this.flareChance.draw(luck), this.flareAfterOverload.draw(luck));
		return new Body(typical, day, day.quantile(Insight.ALPHA), memory, scatter, fatigue, soreness,
				this.usualStiffness.draw(luck), kind.hides().draw(luck));
	}

	private DayLaw day(double unsteadiness, Luck luck) {
		double spread = unsteadiness * this.daySpread.draw(luck);
		double passing = unsteadiness * this.passingScale.draw(luck);
		return this.heavyTailed ? new HeavyTailedDay(spread, passing) : new LogNormalDay(spread);
	}

}
