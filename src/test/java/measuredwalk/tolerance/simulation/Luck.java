package measuredwalk.tolerance.simulation;

import java.util.SplittableRandom;

/** A stream of chance that is a function of its seed and of what it is about. */
final class Luck {

	private final long seed;

	private final SplittableRandom random;

	private Luck(long seed) {
		this.seed = seed;
		this.random = new SplittableRandom(seed);
	}

	static Luck of(long seed) {
		return new Luck(mixed(seed));
	}

	/**
	 * The stream for one thing, always the same however much was drawn here before.
	 * @param topic what it is about
	 * @param number which one of these, such as the day
	 * @return a stream independent of all others
	 */
	Luck on(Topic topic, long number) {
		return new Luck(mixed(this.seed ^ mixed(0x9E3779B97F4A7C15L * (topic.ordinal() + 1) + mixed(number))));
	}

	double uniform() {
		return this.random.nextDouble();
	}

	double between(double low, double high) {
		return low + (high - low) * uniform();
	}

	boolean happens(double chance) {
		return uniform() < chance;
	}

	/** A standard normal draw, by Box and Muller. */
	double gaussian() {
		double radius = Math.sqrt(-2 * Math.log(1 - uniform()));
		return radius * Math.cos(2 * Math.PI * uniform());
	}

	/** A standard logistic draw: its exponential is log-logistic with median 1. */
	double logistic() {
		double p = 1e-12 + (1 - 2e-12) * uniform();
		return Math.log(p / (1 - p));
	}

	/** A draw from Student's law with four degrees of freedom, scaled to variance 1. */
	double heavyTailed() {
		double p = 1e-9 + (1 - 2e-9) * uniform();
		return HeavyTailedDay.studentQuantile(p) / Math.sqrt(2);
	}

	double exponential(double mean) {
		return -mean * Math.log(1 - uniform());
	}

	private static long mixed(long value) {
		long z = value + 0x9E3779B97F4A7C15L;
		z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
		z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
		return z ^ (z >>> 31);
	}

}
