package measuredwalk.tolerance.simulation;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

/** What is known of the paper rules from outside trials holds with these dogs, too. */
class PoliciesTests {

	private static final Comparison COMPARISON = new Comparison(12, 180, Seeds.TUNING.first(4));

	private static final List<Policy> BASELINES = List.of(new Oracle(), new BiasedCoinStaircase(), new TenPercentRule(),
			new CarelessFilter(), new FixedPlan());

	private static final Map<String, Map<String, Figures>> FIGURES = List.of(Worlds.MILDER, Worlds.HARDER)
		.stream()
		.collect(Collectors.toMap(World::name, PoliciesTests::figures));

	@ParameterizedTest
	@CsvSource({ "milder", "harder" })
	void theOracleIsAboveOnTheShareOfDaysThatItAccepts(String world) {
		assertThat(of(world, "oracle").above()).isCloseTo(Insight.ALPHA, within(0.015));
	}

	@ParameterizedTest
	@CsvSource({ "milder", "harder" })
	void nobodyBeatsTheOracle(String world) {
		assertThat(FIGURES.get(world)).allSatisfy((name, figures) -> {
			assertThat(figures.regret()).isGreaterThanOrEqualTo(of(world, "oracle").regret());
			assertThat(figures.under()).isGreaterThanOrEqualTo(of(world, "oracle").under());
		});
	}

	@ParameterizedTest
	@CsvSource({ "milder", "harder" })
	void theFixedPlanHasMostRegretAndNeverComesDown(String world) {
		assertThat(regretOf(world, "fixed plan")).isGreaterThan(regretOf(world, "staircase"))
			.isGreaterThan(regretOf(world, "careless filter"));
		assertThat(of(world, "fixed plan").comeDownMeanIfAbove()).isGreaterThan(40);
	}

	@Test
	void theFixedPlanIsAboveOnMostDaysInTheHarderWorld() {
		assertThat(FIGURES.get("harder")).allSatisfy(
				(name, figures) -> assertThat(figures.above()).isLessThanOrEqualTo(of("harder", "fixed plan").above()));
	}

	@ParameterizedTest
	@CsvSource({ "milder", "harder" })
	void aCarelessFilterIsLessSafeThanAStaircase(String world) {
		Figures careless = of(world, "careless filter");
		Figures staircase = of(world, "staircase");
		assertThat(careless.above()).isGreaterThan(staircase.above());
		assertThat(careless.worstAbove()).isGreaterThan(staircase.worstAbove());
		assertThat(careless.comeDownMean()).isGreaterThan(staircase.comeDownMean());
		assertThat(careless.calibration()).isGreaterThan(0.05);
	}

	@ParameterizedTest
	@CsvSource({ "milder", "harder" })
	void theTenPercentRuleIsSafeAndFarTooLittle(String world) {
		assertThat(of(world, "ten percent a week").above()).isLessThan(of(world, "staircase").above());
		assertThat(of(world, "ten percent a week").under()).isGreaterThan(of(world, "staircase").under());
	}

	@ParameterizedTest
	@CsvSource({ "oracle, 0.135, 0.03", "staircase, 0.122, 0.03", "fixed plan, 0.447, 0.10" })
	void theHarderWorldIsAboutAsHardAsTheOneOutside(String policy, double aboveOutside, double within) {
		// Shares of days above true tolerance of the harder outside simulator, 250 dogs x
		// 4 seeds.
		assertThat(of("harder", policy).above()).isCloseTo(aboveOutside, within(within));
	}

	private static Map<String, Figures> figures(World world) {
		return BASELINES.stream()
			.collect(Collectors.toMap(Policy::name, (policy) -> COMPARISON.figures(world, policy)));
	}

	private static Figures of(String world, String policy) {
		return FIGURES.get(world).get(policy);
	}

	private static double regretOf(String world, String policy) {
		return of(world, policy).regretOfBest();
	}

}
