package measuredwalk.clinic.pages;

import java.util.List;
import java.util.Locale;

import measuredwalk.tolerance.Calibration;

/**
 * Walks of similar expected chance as a row of a table; public for the templates only.
 *
 * @param walks how many
 * @param expected mean chance of a sign that was given, in percent
 * @param expectedSigns on how many walks a sign was expected
 * @param seen on how many a sign was seen
 */
public record CalibrationLine(int walks, String expected, String expectedSigns, int seen) {

	static List<CalibrationLine> of(Calibration calibration) {
		return calibration.rows().stream().map(CalibrationLine::of).toList();
	}

	private static CalibrationLine of(Calibration.Row row) {
		return new CalibrationLine(row.walks(), Math.round(100 * row.expected() / row.walks()) + " %",
				String.format(Locale.ROOT, "%.1f", row.expected()), row.seen());
	}

}
