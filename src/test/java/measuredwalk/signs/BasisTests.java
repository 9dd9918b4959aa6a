package measuredwalk.signs;

import java.time.LocalDate;

import org.junit.jupiter.api.Test;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

class BasisTests {

	private static final LocalDate DAY = LocalDate.of(2026, 3, 14);

	@Test
	void aCheckCountsForTwoYearsUntilItsLastDay() {
		Basis basis = Basis.checked(Grade.C, "common practice, no source", DAY);
		assertThat(basis.isPast(LocalDate.of(2028, 3, 14))).isFalse();
		assertThat(basis.isPast(LocalDate.of(2028, 3, 15))).isTrue();
	}

	@Test
	void aRuleWithoutASourceIsRefused() {
		assertThatIllegalArgumentException().isThrownBy(() -> Basis.of(Grade.C, " "));
		assertThatIllegalArgumentException().isThrownBy(() -> new Basis(Grade.C, "x", DAY, DAY.minusDays(1)));
	}

}
