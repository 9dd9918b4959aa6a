package measuredwalk.tolerance.filter;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.Test;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

/**
 * A level that drifts, seen with normal errors: the filter gives the published means,
 * variances and log-likelihood of the flow of the Nile (Durbin and Koopman 2012, Time
 * Series Analysis by State Space Methods, 2.10; values seen in the tests of two public
 * packages).
 */
class PublishedLocalLevelTests {

	private static final double ERROR_VARIANCE = 15099;

	private static final double DRIFT_VARIANCE = 1469.1;

	@Test
	void filteredMeansVariancesAndLogLikelihoodAreThePublishedOnes() throws IOException {
		Grid grid = new Grid(200, 2, 901);
		Drift drift = Drift.normal(Math.sqrt(DRIFT_VARIANCE), grid.step());
		PointMasses belief = PointMasses.flat(grid);
		double logLikelihood = 0;
		List<String> lines = Files.readAllLines(Path.of("fixtures/public/statistics/nile-local-level.csv"));
		for (int i = 1; i < lines.size(); i++) {
			String[] cells = lines.get(i).split(",");
			PointMasses weighed = ((i > 1) ? belief.drifted(drift) : belief)
				.weighed(density(grid, Double.parseDouble(cells[1])));
			logLikelihood += (i > 1) ? Math.log(weighed.total()) : 0;
			belief = weighed.normalised();
			GridLaw law = belief.law();
			assertThat(law.mean()).as(cells[0]).isCloseTo(Double.parseDouble(cells[6]), within(1e-5));
			assertThat(law.variance() / Double.parseDouble(cells[7])).as(cells[0]).isCloseTo(1, within(1e-6));
		}
		assertThat(logLikelihood).isCloseTo(-632.5456251, within(1e-5));
	}

	private static double[] density(Grid grid, double flow) {
		double deviation = Math.sqrt(ERROR_VARIANCE);
		double[] density = new double[grid.size()];
		for (int i = 0; i < density.length; i++) {
			density[i] = NormalCurve.density((flow - grid.at(i)) / deviation) / deviation;
		}
		return density;
	}

}
