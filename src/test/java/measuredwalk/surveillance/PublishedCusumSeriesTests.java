package measuredwalk.surveillance;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

/**
 * Worked series: Montgomery, Statistical Quality Control, Tables 9.1 and 9.2; Montgomery
 * and Runger, Applied Statistics, Table 16-8; NIST/SEMATECH e-Handbook 6.3.2.3 (from
 * memory).
 */
class PublishedCusumSeriesTests {

	@ParameterizedTest
	@CsvSource({ "cusum-montgomery-9-1.csv, 10, 0.5, 5, 29", "cusum-montgomery-runger-16-8.csv, 99, 1, 10, 0",
			"cusum-nist-6323.csv, 325, 0.3175, 4.1959, 14" })
	void sumsAndFirstAlarmAreThePublishedOnes(String file, double target, double reference, double limit, int alarm)
			throws IOException {
		Cusum chart = new Cusum(reference, limit);
		double rise = 0;
		double fall = 0;
		int first = 0;
		List<String> lines = Files.readAllLines(Path.of("fixtures/public/statistics", file));
		for (int i = 1; i < lines.size(); i++) {
			String[] cells = lines.get(i).split(",");
			double deviation = Double.parseDouble(cells[1]) - target;
			rise = chart.next(rise, deviation);
			fall = chart.next(fall, -deviation);
			assertThat(rise).isCloseTo(Double.parseDouble(cells[2]), within(1e-6));
			assertThat(fall).isCloseTo(Double.parseDouble(cells[3]), within(1e-6));
			first = (first == 0 && (chart.alarms(rise) || chart.alarms(fall))) ? i : first;
		}
		assertThat(first).isEqualTo(alarm);
	}

}
