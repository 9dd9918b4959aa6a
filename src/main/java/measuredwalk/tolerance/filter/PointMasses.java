package measuredwalk.tolerance.filter;

/**
 * Masses on a grid for each of several kinds, and the two moves of a filter: to weigh by
 * a likelihood and to drift. It is a point-mass filter (Bucy and Senne 1971) for a state
 * with a hidden, possibly changing, kind.
 */
public final class PointMasses {

	private final Grid grid;

	private final int kinds;

	/** Kind by kind, each with all of the grid's points. */
	private final double[] masses;

	private PointMasses(Grid grid, int kinds, double[] masses) {
		this.grid = grid;
		this.kinds = kinds;
		this.masses = masses;
	}

	/**
	 * Masses as given.
	 * @param grid the points
	 * @param masses for each kind a mass for each point; they need not sum to 1
	 * @return the same, made to sum to 1
	 */
	public static PointMasses of(Grid grid, double[][] masses) {
		double[] all = new double[masses.length * grid.size()];
		for (int kind = 0; kind < masses.length; kind++) {
			System.arraycopy(masses[kind], 0, all, kind * grid.size(), grid.size());
		}
		return new PointMasses(grid, masses.length, all).normalised();
	}

	/**
	 * The same mass on every point.
	 * @param grid the points
	 * @return one kind, flat
	 */
	public static PointMasses flat(Grid grid) {
		double[] masses = new double[grid.size()];
		java.util.Arrays.fill(masses, 1);
		return of(grid, new double[][] { masses });
	}

	/**
	 * The points.
	 * @return the grid
	 */
	public Grid grid() {
		return this.grid;
	}

	/**
	 * Number of kinds.
	 * @return at least 1
	 */
	public int kinds() {
		return this.kinds;
	}

	/**
	 * The mass of one point of one kind.
	 * @param kind from 0
	 * @param point from 0
	 * @return the mass
	 */
	public double mass(int kind, int point) {
		return this.masses[kind * this.grid.size() + point];
	}

	/**
	 * The sum of all masses: after weighing, the chance of what was weighed in.
	 * @return the sum
	 */
	public double total() {
		double total = 0;
		for (double mass : this.masses) {
			total += mass;
		}
		return total;
	}

	/**
	 * The same masses scaled to sum to 1.
	 * @return masses that sum to 1
	 * @throws IllegalStateException when there is no mass left, which means that the
	 * evidence was impossible
	 */
	public PointMasses normalised() {
		double total = total();
		if (!(total > 0) || Double.isInfinite(total)) {
			throw new IllegalStateException("the evidence is impossible under every hypothesis: total mass " + total);
		}
		double[] scaled = new double[this.masses.length];
		double factor = 1 / total;
		for (int i = 0; i < scaled.length; i++) {
			scaled[i] = this.masses[i] * factor;
		}
		return new PointMasses(this.grid, this.kinds, scaled);
	}

	/**
	 * Weighs by how likely an observation is, the same for every kind. Not normalised, so
	 * that {@link #total()} is the chance of the observation.
	 * @param likelihood for each point
	 * @return the weighed masses
	 */
	public PointMasses weighed(double[] likelihood) {
		double[] weighed = this.masses.clone();
		for (int i = 0; i < weighed.length; i++) {
			weighed[i] *= likelihood[i % this.grid.size()];
		}
		return new PointMasses(this.grid, this.kinds, weighed);
	}

	/**
	 * Weighs and lets each kind turn into others at the same time. Not normalised.
	 * @param moves what each kind becomes
	 * @return the masses after
	 */
	public PointMasses moved(Iterable<KindMove> moves) {
		int size = this.grid.size();
		double[] moved = new double[this.masses.length];
		for (KindMove move : moves) {
			addProduct(this.masses, move.from() * size, move.likelihood(), moved, move.to() * size, size);
		}
		return new PointMasses(this.grid, this.kinds, moved);
	}

	private static void addProduct(double[] masses, int massStart, double[] likelihood, double[] to, int toStart,
			int size) {
		for (int i = 0; i < size; i++) {
			to[toStart + i] += masses[massStart + i] * likelihood[i];
		}
	}

	/**
	 * Lets the state drift, alike for every kind.
	 * @param drift the drift
	 * @return the masses after
	 */
	public PointMasses drifted(Drift drift) {
		int size = this.grid.size();
		double[] drifted = new double[this.masses.length];
		for (Drift.Step step : drift.steps()) {
			for (int start = 0; start < drifted.length; start += size) {
				step.kernel().move(this.masses, start, drifted, start, size, step.chance());
			}
		}
		return new PointMasses(this.grid, this.kinds, drifted);
	}

	/**
	 * Adds the masses of one kind to a row.
	 * @param kind from 0
	 * @param row where to add
	 * @param start where the first point goes
	 */
	public void addTo(int kind, double[] row, int start) {
		int from = kind * this.grid.size();
		for (int i = 0; i < this.grid.size(); i++) {
			row[start + i] += this.masses[from + i];
		}
	}

	/**
	 * The masses of all kinds together as a law on the grid.
	 * @return the law
	 */
	public GridLaw law() {
		double[] row = new double[this.grid.size()];
		for (int kind = 0; kind < this.kinds; kind++) {
			addTo(kind, row, 0);
		}
		return new GridLaw(this.grid, row);
	}

}
