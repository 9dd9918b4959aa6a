package measuredwalk.tolerance.filter;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

import org.junit.jupiter.api.Test;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

/**
 * The example of Neuenschwander, Branson and Gsponer 2008 (Stat Med 27:2420): the same
 * data give three doses by three published rules. Ours is overdose control.
 */
class PublishedDoseEscalationTests {

	private static final double[] DOSES = { 1, 2.5, 5, 10, 15, 20, 25, 30, 40, 50, 75, 100, 150, 200, 250 };

	private static final int[] PATIENTS = { 3, 4, 5, 4, 0, 0, 2 };

	private static final int[] TOXIC = { 0, 0, 0, 0, 0, 0, 2 };

	private static final double REFERENCE = 250;

	/** Log intercept; each kind of the filter is one log slope. */
	private static final Grid INTERCEPTS = new Grid(2.15 - 5, 0.025, 401);

	private static final Grid SLOPES = new Grid(0.52 - 4.5, 0.03, 301);

	private final PointMasses belief = posterior();

	@Test
	void posteriorMeansAreThePublishedOnes() {
		// Figure 1 of the paper, as in the tests of a public package; recomputed .12721
		// at
		// 10 mg, .30887 at 25 mg, .89445 at 250 mg.
		assertThat(mean(10)).isCloseTo(0.12721, within(1e-4));
		assertThat(mean(25)).isCloseTo(0.30887, within(1e-4));
		assertThat(mean(250)).isCloseTo(0.89445, within(1e-4));
	}

	@Test
	void closestMeanToThirtyPercentIsTwentyFiveMilligrams() {
		double closest = DOSES[0];
		for (double dose : DOSES) {
			closest = (Math.abs(mean(dose) - 0.30) < Math.abs(mean(closest) - 0.30)) ? dose : closest;
		}
		assertThat(closest).isEqualTo(25);
	}

	@Test
	void limitOnTheChanceOfMuchToxicityIsTwentyMilligrams() {
		DoubleUnaryOperator chance = (dose) -> expect(dose, (toxicity) -> (toxicity > 0.35) ? 1 : 0);
		assertThat(DoseRule.largest(0.25, chance, DOSES)).isEqualTo(20);
	}

	@Test
	void ourRuleIsOverdoseControlWhichGivesFifteenMilligrams() {
		DoubleUnaryOperator passesTolerance = (dose) -> expect(dose, (toxicity) -> (toxicity > 0.30) ? 1 : 0);
		assertThat(DoseRule.largest(0.25, passesTolerance, DOSES)).isEqualTo(15);
		// Recomputed by another program on a grid of 1201 x 1201: 17.491 mg. The step of
		// the chance over our coarser grid leaves a part in a hundred.
		assertThat(DoseRule.largestWithin(0.25, passesTolerance, 1, 250)).isCloseTo(17.491, within(0.15));
	}

	@Test
	void classicalOverdoseControlGivesTheRecomputedQuantile() {
		// Babb, Rogatko and Zacks 1998 (Stat Med 17:1103): toxicity at the least dose
		// uniform on (0, .33), tolerated dose uniform on (0, 100), one patient at 30
		// without toxicity. Recomputed: the quarter quantile is 36.928.
		Grid doses = new Grid(0.05, 0.1, 1000);
		double[][] masses = new double[330][doses.size()];
		for (int kind = 0; kind < masses.length; kind++) {
			double least = (kind + 0.5) / 1000;
			for (int i = 0; i < doses.size(); i++) {
				masses[kind][i] = 1 - babb(least, doses.at(i), 30);
			}
		}
		GridLaw law = PointMasses.of(doses, masses).law();
		assertThat(law.quantile(0.25)).isCloseTo(36.928, within(0.02));
		assertThat(DoseRule.largestWithin(0.25, law::below, 1, 99)).isCloseTo(law.quantile(0.25), within(1e-3));
	}

	private static double babb(double least, double tolerated, double dose) {
		double slope = (logit(0.33) - logit(least)) / tolerated;
		return 1 / (1 + Math.exp(-logit(least) - slope * dose));
	}

	private static double logit(double share) {
		return Math.log(share / (1 - share));
	}

	private static PointMasses posterior() {
		double[][] prior = new double[SLOPES.size()][INTERCEPTS.size()];
		double correlation = 0.134 / (0.84 * 0.80);
		List<KindMove> seen = new ArrayList<>();
		for (int kind = 0; kind < prior.length; kind++) {
			double slope = (SLOPES.at(kind) - 0.52) / 0.80;
			double[] likelihood = new double[INTERCEPTS.size()];
			for (int i = 0; i < likelihood.length; i++) {
				double intercept = (INTERCEPTS.at(i) - 2.15) / 0.84;
				prior[kind][i] = Math.exp(-(slope * slope - 2 * correlation * slope * intercept + intercept * intercept)
						/ (2 * (1 - correlation * correlation)));
				likelihood[i] = likelihood(INTERCEPTS.at(i), SLOPES.at(kind));
			}
			seen.add(new KindMove(kind, kind, likelihood, 1));
		}
		return PointMasses.of(INTERCEPTS, prior).moved(seen).normalised();
	}

	private static double likelihood(double logIntercept, double logSlope) {
		double likelihood = 1;
		for (int i = 0; i < PATIENTS.length; i++) {
			double toxicity = toxicity(logIntercept, logSlope, DOSES[i]);
			likelihood *= Math.pow(toxicity, TOXIC[i]) * Math.pow(1 - toxicity, PATIENTS[i] - TOXIC[i]);
		}
		return likelihood;
	}

	private static double toxicity(double logIntercept, double logSlope, double dose) {
		return 1 / (1 + Math.exp(-logIntercept - Math.exp(logSlope) * Math.log(dose / REFERENCE)));
	}

	private double mean(double dose) {
		return expect(dose, (toxicity) -> toxicity);
	}

	private double expect(double dose, DoubleUnaryOperator value) {
		double sum = 0;
		for (int kind = 0; kind < SLOPES.size(); kind++) {
			for (int i = 0; i < INTERCEPTS.size(); i++) {
				double mass = this.belief.mass(kind, i);
				if (mass > 0) {
					sum += mass * value.applyAsDouble(toxicity(INTERCEPTS.at(i), SLOPES.at(kind), dose));
				}
			}
		}
		return sum;
	}

}
