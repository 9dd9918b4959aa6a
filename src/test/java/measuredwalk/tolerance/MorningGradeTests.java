package measuredwalk.tolerance;

import java.util.List;

import measuredwalk.signs.Overall;
import measuredwalk.signs.Severity;
import measuredwalk.signs.Sign;
import measuredwalk.signs.SignKind;
import measuredwalk.tolerance.ToleranceEvent.MorningSeen;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static org.assertj.core.api.Assertions.assertThat;

/** How a morning is graded, and what it is to the belief. */
class MorningGradeTests {

	private static final UsualMornings USUAL = UsualMornings.assumed(MorningSettings.standard());

	private final ToleranceModel model = new ToleranceModel();

	@ParameterizedTest
	@CsvSource({ "MILD, , 1, 1, 1", "MILD, USUAL, 1, 0, 0", "MILD, BETTER, 1, 0, 0", "MILD, WORSE, 1, 1, 1",
			"MODERATE, USUAL, 2, 1, 2", "MODERATE, WORSE, 2, 2, 2", ", WORSE, 1, 1, 1", ", USUAL, 0, -1, 0",
			", , 0, 0, 0" })
	void aMildSignThatIsSaidToBeAsUsualIsNoNews(@Nullable Severity severity, @Nullable Overall overall, int seen,
			int aboveUsual, int news) {
		assertThat(MorningGrade.of(morning(severity, overall), USUAL))
			.isEqualTo(new MorningGrade(seen, aboveUsual, news));
	}

	@Test
	void aStiffMorningSaidToBeAsUsualLowersNothing() {
		Suggestion clear = after(morning(null, Overall.USUAL));
		Suggestion asUsual = after(morning(Severity.MILD, Overall.USUAL));
		Suggestion unsaid = after(morning(Severity.MILD, null));
		assertThat(asUsual.toleranceMedian()).isEqualTo(clear.toleranceMedian());
		assertThat(unsaid.toleranceMedian()).isLessThan(clear.toleranceMedian());
	}

	private Suggestion after(MorningSeen morning) {
		ToleranceEvent dog = new ToleranceEvent.DogEnrolled(Journals.FIRST, new WalkPlan(20, 2, 6, 45), null, null,
				true, null);
		return this.model.suggest(List.of(dog, morning), morning.date());
	}

	private static MorningSeen morning(@Nullable Severity severity, @Nullable Overall overall) {
		List<Sign> signs = (severity != null)
				? List.of(new Sign(SignKind.STIFFNESS, true, severity, null, null, null, null)) : List.of();
		return new MorningSeen(Journals.FIRST.plusDays(1), signs, null, overall, false);
	}

}
