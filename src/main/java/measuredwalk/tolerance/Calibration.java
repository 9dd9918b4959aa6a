package measuredwalk.tolerance;

import java.util.List;

/**
 * Whether the chances that were given came true for one dog: on days when at least one
 * walk was told, the chance of seeing a sign that was expected for the walks as they were
 * taken, against the signs that were seen.
 *
 * @param rows by expected chance, the smallest first; empty rows are left out
 * @param walks walks counted
 */
public record Calibration(List<Row> rows, int walks) {

	/** Fewer walks than this are too few to show. */
	public static final int ENOUGH_WALKS = 30;

	public Calibration {
		rows = List.copyOf(rows);
	}

	/**
	 * Walks of similar expected chance.
	 *
	 * @param walks how many
	 * @param expected how many signs were expected on them
	 * @param seen on how many a sign was seen
	 */
	public record Row(int walks, double expected, int seen) {
	}

	/**
	 * Whether there are enough walks to show the table.
	 * @return true from {@link #ENOUGH_WALKS} walks
	 */
	public boolean isEnough() {
		return this.walks >= ENOUGH_WALKS;
	}

}
