package measuredwalk.tolerance.simulation;

/**
 * What use gains and disuse loses: +.2 % a day when the dog is walked to half of its
 * tolerance or more, -.3 % a day at a fifth or less, evenly in between. Eight weeks of
 * restriction cost 1.21 cm of thigh (White 2020), so the loss is real; the rates are
 * those that the tolerance notes ask for. Bounded, because no dog trains without end.
 */
final class Fitness {

	private static final double GAIN_PER_DAY = 0.002;

	private static final double LOSS_PER_DAY = 0.003;

	private static final double IDLE = 0.2;

	private static final double USED = 0.5;

	private static final Range BOUNDS = new Range(-0.40, 0.25);

	private Fitness() {
	}

	static double next(double fitness, double loadRatio) {
		double use = Math.max(0, Math.min(1, (loadRatio - IDLE) / (USED - IDLE)));
		double moved = fitness - LOSS_PER_DAY + use * (GAIN_PER_DAY + LOSS_PER_DAY);
		return Math.max(BOUNDS.low(), Math.min(BOUNDS.high(), moved));
	}

}
