package measuredwalk.tolerance.simulation;

/**
 * Where a dog's or an owner's own value is drawn from, evenly.
 *
 * @param low least value
 * @param high greatest value, at least {@code low}
 */
record Range(double low, double high) {

	Range {
		if (!(low <= high)) {
			throw new IllegalArgumentException("low must not be above high: " + low + ", " + high);
		}
	}

	static Range exactly(double value) {
		return new Range(value, value);
	}

	double draw(Luck luck) {
		return luck.between(this.low, this.high);
	}

	/**
	 * Even on the scale of ratios: for values of which twice and half are equally far.
	 */
	double drawByRatio(Luck luck) {
		return Math.exp(luck.between(Math.log(this.low), Math.log(this.high)));
	}

	boolean holds(double value) {
		return value >= this.low && value <= this.high;
	}

}
