package measuredwalk.tolerance.simulation;

import org.junit.jupiter.api.Test;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

class TableOptionsTests {

	@Test
	void withoutOptionsBothWorldsAreJudgedWithAllPolicies() {
		TableOptions options = TableOptions.of();
		assertThat(options.worlds()).containsExactly(Worlds.MILDER, Worlds.HARDER);
		assertThat(options.policies()).extracting(Policy::name)
			.containsExactly("oracle", "model", "staircase", "ten percent a week", "careless filter", "fixed plan");
		assertThat(options.comparison().seeds()).isEqualTo(Seeds.JUDGING.first(4));
	}

	@Test
	void everyStressWorldCanBeNamed() {
		assertThat(TableOptions.of("worlds=harder: heat wave").worlds()).extracting(World::name)
			.containsExactly("harder: heat wave");
		assertThat(TableOptions.of("worlds=stress").worlds()).extracting(World::name)
			.contains("harder: poor observers", "harder: never reports", "harder: 8 % false alarms",
					"harder: carry-over 0", "harder: carry-over .8", "harder: stiff baseline",
					"harder: missing in runs", "harder: missing not at random", "harder: improving drug",
					"harder: heat wave", "harder: slow decline");
	}

	@Test
	void theSimpleWorldsDifferInTheLuckOfTheirDays() {
		assertThat(TableOptions.of("worlds=simple").worlds()).extracting(World::name)
			.containsExactly("simple: luck 0.08", "simple: luck 0.1", "simple: luck 0.15");
	}

	@Test
	void whatIsNotKnownIsRefusedWithWhatIs() {
		assertThatIllegalArgumentException().isThrownBy(() -> TableOptions.of("dog=3")).withMessageContaining("dogs");
		assertThatIllegalArgumentException().isThrownBy(() -> TableOptions.of("worlds=mild").worlds())
			.withMessageContaining("milder");
	}

}
