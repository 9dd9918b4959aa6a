package measuredwalk.surveillance;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

/**
 * Run lengths against the tables of Brook and Evans 1972, Lucas and Crosier 1982, Lucas
 * 1985 and others in {@code fixtures/public/statistics/arl-tables.csv}, where each row
 * names its source.
 */
class PublishedRunLengthTests {

	private static final int STATES = 240;

	/** Printed with three digits: half a unit of the third. */
	private static final double PRINTED = 0.006;

	private static final double RECOMPUTED = 0.001;

	record Row(String id, String chart, String parameters, double shift, double published, double recomputed) {

		static Row of(String line) {
			List<String> cells = Stream.of(line.split(",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)"))
				.map((cell) -> cell.replace("\"", ""))
				.toList();
			return new Row(cells.get(0), cells.get(1), cells.get(2), Double.parseDouble(cells.get(3)),
					cells.get(4).equals("NA") ? Double.NaN : Double.parseDouble(cells.get(4)),
					Double.parseDouble(cells.get(5)));
		}

		double parameter(String name, double otherwise) {
			for (String part : this.parameters.replace("headstart ", "headstart=")
				.replace("FIR start ", "headstart=")
				.split(" ")) {
				if (part.startsWith(name + "=")) {
					return Double.parseDouble(part.substring(name.length() + 1));
				}
			}
			return otherwise;
		}

	}

	static Stream<Row> normalCusums() throws IOException {
		return rows().filter((row) -> row.chart().startsWith("CUSUM") && row.chart().contains("normal"));
	}

	static Stream<Row> countCusums() throws IOException {
		return rows().filter((row) -> row.chart().contains("Poisson"));
	}

	private static Stream<Row> rows() throws IOException {
		return Files.readAllLines(Path.of("fixtures/public/statistics/arl-tables.csv")).stream().skip(1).map(Row::of);
	}

	@ParameterizedTest
	@MethodSource("normalCusums")
	void averageRunLengthOfNormalScoresIsThePublishedOne(Row row) {
		Cusum chart = new Cusum(row.parameter("k", Double.NaN), row.parameter("h", Double.NaN));
		double start = row.parameter("headstart", 0);
		RunLengths rises = RunLengths.continuous(chart, (score) -> normal(score - row.shift()), STATES);
		RunLengths falls = RunLengths.continuous(chart, (score) -> normal(score + row.shift()), STATES);
		double length = row.chart().contains("two-sided") ? RunLengths.twoSided(rises, falls, start)
				: rises.from(start);
		assertThat(length).isCloseTo(row.recomputed(), within(RECOMPUTED * row.recomputed()));
		if (!Double.isNaN(row.published())) {
			assertThat(length).isCloseTo(row.published(), within(PRINTED * row.published()));
		}
	}

	@ParameterizedTest
	@MethodSource("countCusums")
	void averageRunLengthOfCountsIsExact(Row row) {
		double mean = row.chart().contains(".25") ? 0.25 : 2.4;
		Cusum chart = new Cusum(row.parameter("k", Double.NaN), row.parameter("h", Double.NaN));
		RunLengths lengths = RunLengths.lattice(chart, (score) -> poisson(mean, score), (mean < 1) ? 0.25 : 1);
		assertThat(lengths.from(row.parameter("headstart", 0))).isCloseTo(row.recomputed(), within(1e-3));
	}

	@Test
	void alarmAboveTheLimitOnlyWouldRunMuchLonger() {
		// The convention is a trap: 'more than 10' instead of 'at least 10' gives 854.45.
		RunLengths lengths = RunLengths.lattice(new Cusum(3, 11), (score) -> poisson(2.4, score), 1);
		assertThat(lengths.from(0)).isCloseTo(854.45, within(0.01));
	}

	private static double poisson(double mean, double atMost) {
		double term = Math.exp(-mean);
		double sum = 0;
		for (int count = 0; count <= Math.floor(atMost + 1e-9); count++) {
			sum += term;
			term *= mean / (count + 1);
		}
		return sum;
	}

	/**
	 * By Simpson's rule from the mean, so that it is independent of the product's table.
	 */
	private static double normal(double z) {
		int steps = 400;
		double width = Math.max(-9, Math.min(9, z)) / steps;
		double sum = 0;
		for (int i = 0; i <= steps; i++) {
			double weight = (i == 0 || i == steps) ? 1 : (i % 2 == 1) ? 4 : 2;
			sum += weight * Math.exp(-i * width * i * width / 2);
		}
		return 0.5 + sum * width / 3 / Math.sqrt(2 * Math.PI);
	}

}
