package measuredwalk.tolerance.filter;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

import org.junit.jupiter.api.Test;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

/**
 * A threshold that does not move, seen without errors: the mode of the filter's belief is
 * the published log-normal maximum-likelihood fit.
 */
class PublishedCensoredFitTests {

	private static final Path DATA = Path.of("fixtures/public/statistics");

	/** An effect seen between two doses; 0 and infinity for open ends. */
	private record Seen(double after, double by, double count) {

		/** An exact dose as a very narrow interval. */
		static Seen at(double dose, double count) {
			return new Seen(dose * Math.exp(-WIDTH / 2), dose * Math.exp(WIDTH / 2), count);
		}

		static final double WIDTH = 0.002;

	}

	private record Fit(double mode, double spread, double logLikelihood) {
	}

	@Test
	void rightCensoredShockAbsorbersFitAsPublished() throws IOException {
		// O'Connor 1985 p. 85; fit of Meeker and Escobar 1998, chapter 8, from memory:
		// 10.14 and 0.5301; recomputed 10.144771 and 0.530068.
		Fit fit = fit(rows("censored-shockabsorber.csv").map((row) -> row[1].equals("1") ? Seen.at(number(row[0]), 1)
				: new Seen(number(row[0]), Double.POSITIVE_INFINITY, 1))
			.toList());
		assertThat(fit.mode()).isCloseTo(10.144771, within(2e-5));
		assertThat(fit.spread()).isCloseTo(0.530068, within(2e-5));
	}

	@Test
	void rightCensoredLocomotiveControlsFitAsPublished() throws IOException {
		// Nelson 1982, chapter 8, in logs to base ten, from memory: 2.2223 and 0.3064;
		// recomputed 5.1169247 and 0.7054940 in natural logs, 14.878 % by 80.
		Fit fit = fit(rows("censored-locomotive.csv")
			.map((row) -> row[1].equals("1") ? Seen.at(number(row[0]), number(row[2]))
					: new Seen(number(row[0]), Double.POSITIVE_INFINITY, number(row[2])))
			.toList());
		assertThat(fit.mode() / Math.log(10)).isCloseTo(2.2223, within(5e-5));
		assertThat(fit.spread() / Math.log(10)).isCloseTo(0.3064, within(5e-5));
		assertThat(NormalCurve.below((Math.log(80) - fit.mode()) / fit.spread())).isCloseTo(0.148780, within(2e-5));
	}

	@Test
	void leftCensoredManganeseFitsAsPublished() throws IOException {
		// EPA 2009, example 15-1: meanlog 2.215905, sdlog 1.356291.
		Fit fit = fit(rows("censored-manganese.csv")
			.map((row) -> row[1].equals("1") ? new Seen(0, number(row[0]), 1) : Seen.at(number(row[0]), 1))
			.toList());
		assertThat(fit.mode()).isCloseTo(2.215905, within(2e-5));
		assertThat(fit.spread()).isCloseTo(1.356291, within(2e-5));
	}

	@Test
	void intervalCensoredTurbineCracksFitAsTwoOtherProgramsDo() throws IOException {
		// Nelson 1982, inspection data; the log-normal fit was recomputed by survreg and
		// by another program: 7.442418, 0.999000, log-likelihood -311.88225.
		Fit fit = fit(rows("censored-cracks.csv")
			.map((row) -> new Seen(row[0].equals("NA") ? 0 : number(row[0]),
					row[1].equals("NA") ? Double.POSITIVE_INFINITY : number(row[1]), number(row[2])))
			.toList());
		assertThat(fit.mode()).isCloseTo(7.442418, within(2e-5));
		assertThat(fit.spread()).isCloseTo(0.999000, within(2e-5));
		assertThat(fit.logLikelihood()).isCloseTo(-311.88225, within(1e-4));
	}

	private static java.util.stream.Stream<String[]> rows(String file) throws IOException {
		return Files.readAllLines(DATA.resolve(file))
			.stream()
			.skip(1)
			.filter((line) -> !line.isBlank())
			.map((line) -> line.replace("\"", "").split(","));
	}

	private static double number(String cell) {
		return Double.parseDouble(cell);
	}

	/** The spread whose best point is best, by golden section. */
	private static Fit fit(List<Seen> seen) {
		DoubleUnaryOperator best = (logSpread) -> modeAt(seen, Math.exp(logSpread)).logLikelihood();
		double ratio = (Math.sqrt(5) - 1) / 2;
		double low = Math.log(0.2);
		double high = Math.log(3);
		for (int i = 0; i < 40; i++) {
			double first = high - ratio * (high - low);
			double second = low + ratio * (high - low);
			if (best.applyAsDouble(first) > best.applyAsDouble(second)) {
				high = second;
			}
			else {
				low = first;
			}
		}
		return modeAt(seen, Math.exp((low + high) / 2));
	}

	/** All of it at once: with nothing that drifts, the order does not matter. */
	private static Fit modeAt(List<Seen> seen, double spread) {
		Grid grid = new Grid(0, 0.005, 2401);
		ThresholdCurve curve = new ThresholdCurve(grid, spread);
		double[] likelihood = new double[grid.size()];
		Arrays.fill(likelihood, 1);
		for (Seen one : seen) {
			double[] once = Double.isInfinite(one.by()) ? curve.notBy(one.after())
					: curve.between(one.after(), one.by());
			for (int i = 0; i < likelihood.length; i++) {
				likelihood[i] *= Math.pow(once[i], one.count());
			}
		}
		PointMasses weighed = PointMasses.flat(grid).weighed(likelihood);
		return mode(weighed.normalised(), spread, Math.log(weighed.total()));
	}

	/** The top of the parabola through the three highest log masses. */
	private static Fit mode(PointMasses belief, double spread, double evidence) {
		int top = 1;
		for (int i = 1; i < belief.grid().size() - 1; i++) {
			top = (belief.mass(0, i) > belief.mass(0, top)) ? i : top;
		}
		double before = Math.log(belief.mass(0, top - 1));
		double at = Math.log(belief.mass(0, top));
		double after = Math.log(belief.mass(0, top + 1));
		double shift = (before - after) / (2 * (before - 2 * at + after));
		double highest = at - (before - after) * shift / 4;
		return new Fit(belief.grid().at(top) + shift * belief.grid().step(), spread,
				evidence + highest + Math.log(belief.grid().size()));
	}

}
