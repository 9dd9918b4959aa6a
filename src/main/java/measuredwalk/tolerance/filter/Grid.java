package measuredwalk.tolerance.filter;

/**
 * Evenly spaced points, such as logarithms of minutes.
 *
 * @param start the first point
 * @param step distance between two neighbours, above 0
 * @param size number of points, at least 2
 */
public record Grid(double start, double step, int size) {

	public Grid {
		if (!(step > 0) || size < 2) {
			throw new IllegalArgumentException("a grid needs a step above 0 and at least 2 points");
		}
	}

	/**
	 * A point of the grid.
	 * @param index from 0; an index outside of the grid gives the point that would be
	 * there
	 * @return the point
	 */
	public double at(int index) {
		return this.start + index * this.step;
	}

	/**
	 * The same grid with more points on both sides.
	 * @param before how many more at the low end
	 * @param after how many more at the high end
	 * @return the wider grid
	 */
	public Grid widened(int before, int after) {
		return new Grid(at(-before), this.step, this.size + before + after);
	}

}
