package measuredwalk.tolerance.simulation;

import java.util.List;
import java.util.stream.IntStream;

import measuredwalk.tolerance.Suggestion;
import measuredwalk.tolerance.ToleranceModel;
import measuredwalk.tolerance.ToleranceSettings;
import org.junit.jupiter.api.Test;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * With dogs of its own laws a Bayesian filter must be right about how unsure it is: the
 * truth falls into each part of its belief as often as that part says (Cook, Gelman and
 * Rubin 2006, Journal of Computational and Graphical Statistics 15:675; from memory).
 */
class CalibrationBySimulationTests {

	private static final int DOGS = 600;

	private static final int DAYS = 20;

	/**
	 * The parts that a suggestion shows: below its 80 percent interval, its two halves,
	 * above.
	 */
	private static final double[] PARTS = { 0.1, 0.4, 0.4, 0.1 };

	/**
	 * One in a thousand for chi-square with 3 degrees of freedom, from any printed table
	 * (from memory).
	 */
	private static final double ONE_IN_A_THOUSAND = 16.27;

	private static final ToleranceSettings LAWS = ToleranceSettings.standard();

	private static final List<ModelDog.Answered> ANSWERED = answers();

	@Test
	void theTruthFallsIntoEachPartOfTheBeliefAsOftenAsThatPartSays() {
		assertThat(chiSquare(ANSWERED)).isLessThan(ONE_IN_A_THOUSAND);
	}

	@Test
	void theChanceOfTroubleIsMetAsOftenAsItSays() {
		double surprise = 0;
		double variance = 0;
		for (ModelDog.Answered answered : ANSWERED) {
			double chance = answered.said().chanceOfTrouble();
			surprise += chance - ((answered.said().minutes() > answered.tolerance()) ? 1 : 0);
			variance += chance * (1 - chance);
		}
		// Three and a third standard deviations: one in a thousand.
		assertThat(Math.abs(surprise / Math.sqrt(variance))).isLessThan(3.3);
	}

	@Test
	void aBeliefThatIsATenthTooHighIsFoundOut() {
		List<ModelDog.Answered> off = ANSWERED.stream()
			.map((answered) -> new ModelDog.Answered(answered.said(), 0.9 * answered.tolerance()))
			.toList();
		assertThat(chiSquare(off)).isGreaterThan(ONE_IN_A_THOUSAND);
	}

	private static List<ModelDog.Answered> answers() {
		ToleranceModel model = new ToleranceModel();
		return IntStream.range(0, DOGS)
			.mapToObj((dog) -> ModelDog.live(LAWS, model, DAYS, Luck.of(4_000_000L + dog)))
			.toList();
	}

	private static double chiSquare(List<ModelDog.Answered> answers) {
		double[] counts = new double[PARTS.length];
		answers.forEach((answered) -> counts[part(answered.said(), answered.tolerance())]++);
		double sum = 0;
		for (int part = 0; part < PARTS.length; part++) {
			double expected = PARTS[part] * answers.size();
			sum += (counts[part] - expected) * (counts[part] - expected) / expected;
		}
		return sum;
	}

	private static int part(Suggestion said, double tolerance) {
		if (tolerance < said.toleranceMedian()) {
			return (tolerance < said.toleranceLow()) ? 0 : 1;
		}
		return (tolerance < said.toleranceHigh()) ? 2 : 3;
	}

}
