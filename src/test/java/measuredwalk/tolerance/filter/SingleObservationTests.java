package measuredwalk.tolerance.filter;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

/**
 * One walk with a closed-form answer, missed signs included: not published, own formula
 * in {@code checks-grid-conjugate.json}, confirmed there by a grid of 40,001 points.
 */
class SingleObservationTests {

	private static final Grid GRID = new Grid(Math.log(24) - 4, 0.02, 401);

	record Case(double dose, String told, double evidence, double mean, double variance) {
	}

	static List<Case> cases() throws IOException {
		JsonNode json = new JsonMapper()
			.readTree(Files.readString(Path.of("fixtures/public/statistics/checks-grid-conjugate.json")));
		List<Case> cases = new ArrayList<>();
		for (JsonNode one : json.path("cases")) {
			for (String told : List.of("no", "sign", "none_q06")) {
				JsonNode answer = one.path(told);
				cases.add(new Case(one.path("d").doubleValue(), told, answer.path("Z").doubleValue(),
						answer.path("mean").doubleValue(), answer.path("var").doubleValue()));
			}
		}
		return cases;
	}

	@ParameterizedTest
	@MethodSource("cases")
	void evidenceMeanAndVarianceAreTheClosedForm(Case one) {
		double[] prior = new double[GRID.size()];
		for (int i = 0; i < prior.length; i++) {
			prior[i] = NormalCurve.density((GRID.at(i) - Math.log(24)) / 0.4);
		}
		double[] told = new ThresholdCurve(GRID, 0.15).by(one.dose());
		double seen = one.told().equals("none_q06") ? 0.6 : 1;
		for (int i = 0; i < told.length; i++) {
			told[i] = one.told().equals("sign") ? told[i] : 1 - seen * told[i];
		}
		PointMasses weighed = PointMasses.of(GRID, new double[][] { prior }).weighed(told);
		assertThat(weighed.total()).isCloseTo(one.evidence(), within(1e-9));
		assertThat(weighed.normalised().law().mean()).isCloseTo(one.mean(), within(1e-8));
		assertThat(weighed.normalised().law().variance()).isCloseTo(one.variance(), within(1e-8));
	}

}
