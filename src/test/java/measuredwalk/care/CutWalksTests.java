package measuredwalk.care;

import java.time.LocalDate;
import java.util.List;

import measuredwalk.tolerance.Advice;
import measuredwalk.tolerance.Reason;
import measuredwalk.tolerance.Suggestion;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static org.assertj.core.api.Assertions.assertThat;

class CutWalksTests {

	private static Suggestion suggestion(int walks, double minutes, Advice advice, Reason reason) {
		return new Suggestion(LocalDate.of(2026, 3, 14), walks, minutes, minutes, minutes, 0.1, 30, 20, 40, advice,
				List.of(reason));
	}

	@ParameterizedTest(name = "{0} x {1} min, {2} ({3}), after {4} min -> {5}")
	@CsvSource(textBlock = """
			2, 15, USUAL,       LEARNED_FROM_WALKS,          20, true
			2, 20, USUAL,       LEARNED_FROM_WALKS,          20, false
			2, 25, USUAL,       LEARNED_FROM_WALKS,          20, false
			2, 19.5, USUAL,     LEARNED_FROM_WALKS,          20, false
			0, 15, USUAL,       WALKS_OF_TODAY_DONE,         20, false
			2, 10, EASE_OFF,    FLARE_LIKELY,                10, true
			1, 6,  REST,        REST_AFTER_A_BAD_MORNING,    6,  true
			0, 0,  CALL_CLINIC, CALL_THE_CLINIC_TODAY,       20, false
			0, 0,  EMERGENCY,   EMERGENCY_SIGNS,             20, false
			2, 10, USUAL,       ONLY_THE_PLAN_AFTER_SURGERY, 20, false
			""")
	void anIdeaIsForShorterWalksThatTheClinicNeedNotDecide(int walks, double minutes, Advice advice, Reason reason,
			double before, boolean cut) {
		Suggestion earlier = suggestion(2, before, Advice.USUAL, Reason.LEARNED_FROM_WALKS);
		assertThat(CutWalks.cut(suggestion(walks, minutes, advice, reason), List.of(earlier))).isEqualTo(cut);
	}

}
