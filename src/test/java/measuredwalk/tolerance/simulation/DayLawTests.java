package measuredwalk.tolerance.simulation;

import java.util.Arrays;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

class DayLawTests {

	private static final int DRAWS = 40_000;

	static Stream<DayLaw> laws() {
		return Stream.of(new LogNormalDay(0.15), new HeavyTailedDay(0.14, 0.07));
	}

	@ParameterizedTest
	@MethodSource("laws")
	void aQuantileIsPassedByItsShareOfDays(DayLaw law) {
		double[] days = days(law);
		for (double share : new double[] { 0.05, 0.15, 0.50, 0.90 }) {
			double quantile = law.quantile(share);
			double below = Arrays.stream(days).filter((day) -> day < quantile).count() / (double) DRAWS;
			assertThat(below).isCloseTo(share, within(0.007));
		}
	}

	@Test
	void theHarderLawHasHeavierTailsThanANormalOneOfTheSameSpread() {
		double[] days = days(new HeavyTailedDay(0.14, 0.07));
		double spread = Math.sqrt(Arrays.stream(days).map((day) -> day * day).average().orElseThrow());
		double far = Arrays.stream(days).filter((day) -> Math.abs(day) > 3.5 * spread).count() / (double) DRAWS;
		assertThat(far).isGreaterThan(5 * 2 * NormalLaw.below(-3.5));
	}

	@ParameterizedTest
	@CsvSource({ "0.5, 0", "0.15, -1.036433", "0.841345, 1", "0.975, 1.959964" })
	void theNormalLawAgreesWithPrintedTables(double share, double quantile) {
		// Quantiles of the standard normal law from any printed table (from memory).
		assertThat(NormalLaw.quantile(share)).isCloseTo(quantile, within(1e-5));
		assertThat(NormalLaw.below(quantile)).isCloseTo(share, within(1e-6));
	}

	@ParameterizedTest
	@CsvSource({ "0.90, 1.533", "0.95, 2.132", "0.975, 2.776", "0.01, -3.747" })
	void studentsLawAgreesWithPrintedTables(double share, double quantile) {
		// Student's law with 4 degrees of freedom from any printed table (from memory).
		assertThat(HeavyTailedDay.studentQuantile(share)).isCloseTo(quantile, within(5e-4));
	}

	private static double[] days(DayLaw law) {
		Luck luck = Luck.of(11);
		double[] days = new double[DRAWS];
		for (int day = 0; day < DRAWS; day++) {
			days[day] = law.innovation(luck) + law.passing(luck);
		}
		return days;
	}

}
