package measuredwalk.tolerance;

import java.util.ArrayList;
import java.util.List;

/** Collects expected and seen signs, walk by walk. */
final class CalibrationCount {

	/** Rows meet at these expected chances. */
	private static final double[] BOUNDS = { 0.05, 0.10, 0.20, 1.01 };

	private final int[] walks = new int[BOUNDS.length];

	private final double[] expected = new double[BOUNDS.length];

	private final int[] seen = new int[BOUNDS.length];

	void add(double chance, ToleranceEvent.WalkTaken walk) {
		int row = 0;
		while (chance >= BOUNDS[row]) {
			row++;
		}
		this.walks[row]++;
		this.expected[row] += chance;
		this.seen[row] += walk.signs().stream().anyMatch(SignMeaning::countsForTolerance) ? 1 : 0;
	}

	Calibration table() {
		List<Calibration.Row> rows = new ArrayList<>();
		int all = 0;
		for (int row = 0; row < BOUNDS.length; row++) {
			all += this.walks[row];
			if (this.walks[row] > 0) {
				rows.add(new Calibration.Row(this.walks[row], this.expected[row], this.seen[row]));
			}
		}
		return new Calibration(rows, all);
	}

}
