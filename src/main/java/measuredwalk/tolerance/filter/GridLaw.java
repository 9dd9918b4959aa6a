package measuredwalk.tolerance.filter;

/** A probability law of one number, as masses on a grid. */
public final class GridLaw {

	private final Grid grid;

	private final double[] masses;

	/**
	 * A law from masses.
	 * @param grid the points
	 * @param masses one for each point, scaled here to sum to 1; the law keeps the array
	 */
	public GridLaw(Grid grid, double[] masses) {
		this.grid = grid;
		this.masses = masses;
		double total = 0;
		for (double mass : masses) {
			total += mass;
		}
		for (int i = 0; i < masses.length; i++) {
			masses[i] /= total;
		}
	}

	/**
	 * The same law with an independent normal number added. What would leave the grid is
	 * lost.
	 * @param deviation the number's standard deviation; under a grid step it is left out
	 * @return the wider law
	 */
	public GridLaw widened(double deviation) {
		if (deviation < this.grid.step()) {
			return this;
		}
		double[] wider = new double[this.masses.length];
		Kernel.normal(0, deviation, this.grid.step())
			.move(this.masses, 0, this.masses.length, wider, 1, new Bench(wider.length));
		return new GridLaw(this.grid, wider);
	}

	/**
	 * The points.
	 * @return the grid
	 */
	public Grid grid() {
		return this.grid;
	}

	/**
	 * The mass of one point.
	 * @param point from 0
	 * @return the mass
	 */
	public double mass(int point) {
		return this.masses[point];
	}

	/**
	 * The mean.
	 * @return the mean
	 */
	public double mean() {
		double sum = 0;
		for (int i = 0; i < this.masses.length; i++) {
			sum += i * this.masses[i];
		}
		return this.grid.start() + sum * this.grid.step();
	}

	/**
	 * The variance.
	 * @return the variance
	 */
	public double variance() {
		double centre = (mean() - this.grid.start()) / this.grid.step();
		double sum = 0;
		for (int i = 0; i < this.masses.length; i++) {
			sum += (i - centre) * (i - centre) * this.masses[i];
		}
		return sum * this.grid.step() * this.grid.step();
	}

	/**
	 * A quantile, linear within a cell; a point's mass is spread over half a step to
	 * either side.
	 * @param share how much mass lies below, in (0, 1)
	 * @return the quantile
	 */
	public double quantile(double share) {
		double below = 0;
		for (int i = 0; i < this.masses.length; i++) {
			if (below + this.masses[i] >= share && this.masses[i] > 0) {
				return this.grid.at(i) + ((share - below) / this.masses[i] - 0.5) * this.grid.step();
			}
			below += this.masses[i];
		}
		return this.grid.at(this.masses.length - 1);
	}

	/**
	 * How much mass lies below a value, linear within a cell.
	 * @param value the value
	 * @return the share, in [0, 1]
	 */
	public double below(double value) {
		double position = (value - this.grid.start()) / this.grid.step() + 0.5;
		double below = 0;
		for (int i = 0; i < this.masses.length; i++) {
			below += this.masses[i] * Math.max(0, Math.min(1, position - i));
		}
		return below;
	}

	/**
	 * The expected value of a function that depends on the number only.
	 * @param values the function on the grid's points
	 * @return the expectation
	 */
	public double expect(double[] values) {
		double sum = 0;
		for (int i = 0; i < this.masses.length; i++) {
			sum += values[i] * this.masses[i];
		}
		return sum;
	}

}
