package measuredwalk.reading.score;

/** Counts of one field: right, missed and invented. */
public final class Tally {

	private int right;

	private int missed;

	private int invented;

	/** Counts a label that was read right. */
	public void right() {
		this.right++;
	}

	/** Counts a label that was not read. */
	public void missed() {
		this.missed++;
	}

	/** Counts something read that is not labelled. */
	public void invented() {
		this.invented++;
	}

	/**
	 * How many labels were read right.
	 * @return at least 0
	 */
	public int rightOnes() {
		return this.right;
	}

	/**
	 * How many labels were missed or read as something else.
	 * @return at least 0
	 */
	public int missedOnes() {
		return this.missed;
	}

	/**
	 * How much was read that is not labelled so.
	 * @return at least 0
	 */
	public int inventedOnes() {
		return this.invented;
	}

	/**
	 * How many labels there were.
	 * @return right and missed ones
	 */
	public int labels() {
		return this.right + this.missed;
	}

	/**
	 * The share of labels that were read right.
	 * @return from 0 to 1; 1 when there were none
	 */
	public double recall() {
		return (labels() == 0) ? 1 : (double) this.right / labels();
	}

	/**
	 * The share of what was read that is right.
	 * @return from 0 to 1; 1 when nothing was read
	 */
	public double precision() {
		return (this.right + this.invented == 0) ? 1 : (double) this.right / (this.right + this.invented);
	}

	/**
	 * The harmonic mean of precision and recall.
	 * @return from 0 to 1
	 */
	public double f1() {
		double sum = precision() + recall();
		return (sum == 0) ? 0 : 2 * precision() * recall() / sum;
	}

	@Override
	public String toString() {
		return String.format(java.util.Locale.ROOT, "recall %.3f precision %.3f F1 %.3f (labels %d, invented %d)",
				recall(), precision(), f1(), labels(), this.invented);
	}

}
