package measuredwalk.tolerance.filter;

import java.util.Arrays;

/**
 * Masses on a grid for each of several kinds, and the two moves of a filter: to weigh by
 * a likelihood and to drift. It is a point-mass filter (Bucy and Senne 1971) for a state
 * with a hidden, possibly changing, kind. Not changed once made.
 */
public final class PointMasses {

	/** Points at both ends that together hold less than this share are left out. */
	private static final double NEGLIGIBLE = 1e-12;

	private final Grid grid;

	/** For each kind a mass for each of the grid's points. */
	private final double[][] masses;

	/** First point that has mass. */
	private final int low;

	/** The point after the last that has mass. */
	private final int high;

	private PointMasses(Grid grid, double[][] masses, int low, int high) {
		this.grid = grid;
		this.masses = masses;
		this.low = low;
		this.high = high;
	}

	/**
	 * Masses as given.
	 * @param grid the points
	 * @param masses for each kind a mass for each point; they need not sum to 1
	 * @return the same, made to sum to 1
	 */
	public static PointMasses of(Grid grid, double[][] masses) {
		return new PointMasses(grid, masses, 0, grid.size()).normalised();
	}

	/**
	 * The same mass on every point.
	 * @param grid the points
	 * @return one kind, flat
	 */
	public static PointMasses flat(Grid grid) {
		double[] masses = new double[grid.size()];
		Arrays.fill(masses, 1);
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
		return this.masses.length;
	}

	/**
	 * First point that has mass.
	 * @return its index
	 */
	public int low() {
		return this.low;
	}

	/**
	 * The point after the last that has mass.
	 * @return its index
	 */
	public int high() {
		return this.high;
	}

	/**
	 * The mass of one point of one kind.
	 * @param kind from 0
	 * @param point from 0
	 * @return the mass
	 */
	public double mass(int kind, int point) {
		return this.masses[kind][point];
	}

	/**
	 * The sum of all masses: after weighing, the chance of what was weighed in.
	 * @return the sum
	 */
	public double total() {
		double total = 0;
		for (int kind = 0; kind < this.masses.length; kind++) {
			total += total(kind);
		}
		return total;
	}

	/**
	 * The sum of one kind's masses.
	 * @param kind from 0
	 * @return the sum
	 */
	public double total(int kind) {
		return sum(this.masses[kind], this.low, this.high);
	}

	/**
	 * The same masses scaled to sum to 1, without ends that hold next to nothing.
	 * @return masses that sum to 1
	 * @throws IllegalStateException when there is no mass left, which means that the
	 * evidence was impossible
	 */
	public PointMasses normalised() {
		return normalisedInto(new double[this.masses.length][this.grid.size()]);
	}

	/**
	 * Into rows that are nobody else's yet, perhaps these masses' own: a copy would cost
	 * as much as the drift itself.
	 */
	private PointMasses normalisedInto(double[][] rows) {
		double[] points = points();
		double total = sum(points, this.low, this.high);
		if (!(total > 0) || Double.isInfinite(total)) {
			throw new IllegalStateException("the evidence is impossible under every hypothesis: total mass " + total);
		}
		int first = this.low;
		for (double left = points[first]; left < NEGLIGIBLE * total; left += points[first]) {
			first++;
		}
		int end = this.high;
		for (double right = points[end - 1]; right < NEGLIGIBLE * total; right += points[end - 1]) {
			end--;
		}
		return scaledInto(rows, 1 / total, first, end);
	}

	private PointMasses scaledInto(double[][] rows, double factor, int first, int end) {
		for (int kind = 0; kind < rows.length; kind++) {
			double[] from = this.masses[kind];
			double[] to = rows[kind];
			for (int i = first; i < end; i++) {
				to[i] = from[i] * factor;
			}
			Arrays.fill(to, this.low, first, 0);
			Arrays.fill(to, end, this.high, 0);
		}
		return new PointMasses(this.grid, rows, first, end);
	}

	/**
	 * Weighs by how likely an observation is, the same for every kind. Not normalised, so
	 * that {@link #total()} is the chance of the observation.
	 * @param likelihood for each point
	 * @return the weighed masses
	 */
	public PointMasses weighed(double[] likelihood) {
		java.util.List<KindMove> stays = new java.util.ArrayList<>();
		for (int kind = 0; kind < this.masses.length; kind++) {
			stays.add(new KindMove(kind, kind, likelihood, 1));
		}
		return moved(stays);
	}

	/**
	 * Weighs and lets each kind turn into others at the same time. Not normalised.
	 * @param moves what each kind becomes
	 * @return the masses after
	 */
	public PointMasses moved(Iterable<KindMove> moves) {
		return moved(moves, this.masses.length);
	}

	/**
	 * The same with the kinds added up in groups: kind k goes to group k modulo the
	 * number of groups.
	 * @param moves what each kind becomes
	 * @param groups number of groups
	 * @return the masses after, one kind for each group
	 */
	public PointMasses moved(Iterable<KindMove> moves, int groups) {
		double[][] moved = new double[groups][this.grid.size()];
		for (KindMove move : moves) {
			addProduct(move, moved[move.to() % groups]);
		}
		return new PointMasses(this.grid, moved, this.low, this.high);
	}

	private void addProduct(KindMove move, double[] to) {
		double[] from = this.masses[move.from()];
		double[] likelihood = move.likelihood();
		double factor = move.factor();
		for (int i = this.low; i < this.high; i++) {
			to[i] += from[i] * likelihood[i] * factor;
		}
	}

	/**
	 * Lets the state drift, alike for every kind.
	 * @param drift the drift
	 * @return the masses after, as {@link #normalised}
	 * @throws IllegalStateException as {@link #normalised}
	 */
	public PointMasses drifted(Drift drift) {
		double[][] drifted = new double[this.masses.length][this.grid.size()];
		Bench bench = new Bench(this.grid.size());
		int reach = 0;
		for (Drift.Step step : drift.steps()) {
			reach = Math.max(reach, step.kernel().reach());
			for (int kind = 0; kind < drifted.length; kind++) {
				step.kernel().move(this.masses[kind], this.low, this.high, drifted[kind], step.chance(), bench);
			}
		}
		int from = Math.max(0, this.low - reach);
		int end = Math.min(this.grid.size(), this.high + reach);
		return new PointMasses(this.grid, drifted, from, end).normalisedInto(drifted);
	}

	/**
	 * Adds the masses of one kind to a row.
	 * @param kind from 0
	 * @param row where to add
	 * @param start where point 0 goes
	 */
	public void addTo(int kind, double[] row, int start) {
		double[] from = this.masses[kind];
		for (int i = this.low; i < this.high; i++) {
			row[start + i] += from[i];
		}
	}

	/**
	 * Adds the masses of one kind, multiplied, to a row that begins at point 0.
	 * @param kind from 0
	 * @param row where to add
	 * @param factor multiplies them
	 */
	public void addScaledTo(int kind, double[] row, double factor) {
		double[] from = this.masses[kind];
		for (int i = this.low; i < this.high; i++) {
			row[i] += factor * from[i];
		}
	}

	private static double sum(double[] row, int from, int end) {
		double sum = 0;
		for (int i = from; i < end; i++) {
			sum += row[i];
		}
		return sum;
	}

	private double[] points() {
		return summed(0, 1);
	}

	/**
	 * The masses of a group of kinds together.
	 * @param group from 0: the kinds that leave it when divided by the number of groups
	 * @param groups number of groups
	 * @return the mass of each point
	 */
	public double[] summed(int group, int groups) {
		double[] row = new double[this.grid.size()];
		for (int kind = group; kind < this.masses.length; kind += groups) {
			add(this.masses[kind], row, this.low, this.high);
		}
		return row;
	}

	/** Alone in its method, so that the compiler makes vector instructions of it. */
	private static void add(double[] from, double[] to, int low, int high) {
		for (int i = low; i < high; i++) {
			to[i] += from[i];
		}
	}

	/**
	 * The masses of all kinds together as a law on the grid.
	 * @return the law
	 */
	public GridLaw law() {
		return new GridLaw(this.grid, points());
	}

}
