package measuredwalk.tolerance;

/**
 * What one walk says, in minutes of load: minutes times the load factor (plain minutes
 * for a clean walk), plus what was carried over.
 *
 * @param total load at the end of the walk
 * @param grade 0 nothing seen, 1 mild, 2 clear, 3 severe
 * @param onsetAfter load at which the first sign had not begun
 * @param onsetBy load by which it had begun
 * @param windowShare the onset's window as a share of the walk, 1 when no time was told
 * @param late whether it was told late
 */
record WalkEvidence(double total, int grade, double onsetAfter, double onsetBy, double windowShare, boolean late) {

	static WalkEvidence clean(double total, boolean late) {
		return new WalkEvidence(total, 0, 0, total, 1, late);
	}

	boolean hasSigns() {
		return this.grade > 0;
	}

}
