package measuredwalk.tolerance;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;

import measuredwalk.signs.Overall;
import measuredwalk.signs.Severity;
import measuredwalk.signs.Sign;
import measuredwalk.signs.SignKind;
import org.junit.jupiter.api.Test;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

/** The model doubts itself when more trouble comes than it foretold. */
class PredictiveCheckTests {

	private static final LocalDate FIRST = LocalDate.of(2026, 1, 5);

	private static final CheckSettings SETTINGS = CheckSettings.standard();

	@Test
	void troubleAsForetoldRaisesNoDoubt() {
		PredictiveCheck check = PredictiveCheck.NONE;
		for (int day = 0; day < 200; day++) {
			check = check.with(((day % 5 == 0) ? 1 : 0) - 0.2, 0.2 * 0.8, SETTINGS);
		}
		assertThat(check.doubt(SETTINGS)).isZero();
	}

	@Test
	void muchMoreTroubleThanForetoldRaisesDoubtToItsBound() {
		PredictiveCheck check = PredictiveCheck.NONE;
		for (int day = 0; day < 200; day++) {
			check = check.with(((day % 2 == 0) ? 1 : 0) - 0.1, 0.1 * 0.9, SETTINGS);
		}
		assertThat(check.doubt(SETTINGS)).isEqualTo(1);
		assertThat(check.widening(SETTINGS)).isCloseTo(SETTINGS.widest(), within(1e-12));
	}

	@Test
	void lessTroubleThanForetoldRaisesNoDoubt() {
		PredictiveCheck check = PredictiveCheck.NONE;
		for (int day = 0; day < 200; day++) {
			check = check.with(-0.4, 0.4 * 0.6, SETTINGS);
		}
		assertThat(check.doubt(SETTINGS)).isZero();
	}

	@Test
	void aFewWalksAreNotEnoughToDoubt() {
		assertThat(PredictiveCheck.NONE.with(3, 0.5, SETTINGS).doubt(SETTINGS)).isZero();
	}

	/**
	 * Short walks bring signs and long ones do not, which no tolerance explains: the
	 * belief takes the signs for imagined, and foretells too few of them.
	 */
	@Test
	void aDogThatBreaksTheModelGetsAWiderIntervalAndNeverALongerWalk() {
		List<ToleranceEvent> journal = contraryDog(95);
		ToleranceCourse doubting = new ToleranceModel().follow(journal.subList(0, 1));
		ToleranceCourse sure = new ToleranceModel(withoutDoubt()).follow(journal.subList(0, 1));
		double widened = 0;
		for (ToleranceEvent event : journal.subList(1, journal.size())) {
			doubting.tell(event);
			sure.tell(event);
			Suggestion one = doubting.suggest(event.date());
			Suggestion other = sure.suggest(event.date());
			assertThat(one.minutes()).isLessThanOrEqualTo(other.minutes());
			widened = Math.max(widened, Math.log(one.toleranceHigh() / one.toleranceLow())
					- Math.log(other.toleranceHigh() / other.toleranceLow()));
		}
		assertThat(widened).isPositive();
		assertThat(doubting.chances(FIRST.plusDays(96)).longest(0.22))
			.isLessThan(sure.chances(FIRST.plusDays(96)).longest(0.22));
	}

	private static ToleranceSettings withoutDoubt() {
		ToleranceSettings standard = ToleranceSettings.standard();
		return new ToleranceSettings(standard.drift(), standard.flares(), standard.walking(), standard.owners(),
				standard.mornings(), standard.dosing(), standard.limits(), CheckSettings.none());
	}

	private static List<ToleranceEvent> contraryDog(int days) {
		List<ToleranceEvent> journal = new ArrayList<>();
		journal.add(new ToleranceEvent.DogEnrolled(FIRST, new WalkPlan(20, 2, 6, 45), null, null, true, null));
		for (int day = 1; day <= days; day++) {
			LocalDate date = FIRST.plusDays(day);
			boolean bad = day % 2 == 0;
			journal.add(new ToleranceEvent.MorningSeen(date, List.of(), null, Overall.USUAL, false));
			journal.add(walk(date, 8, bad ? 10 : 22, bad));
			journal.add(walk(date, 17, bad ? 10 : 22, false));
		}
		return journal;
	}

	private static ToleranceEvent walk(LocalDate date, int hour, double minutes, boolean sign) {
		Sign slowing = new Sign(SignKind.SLOWING, true, Severity.MILD, null, null, null, null);
		return new ToleranceEvent.WalkTaken(date, LocalTime.of(hour, 0), minutes, minutes, minutes, null,
				sign ? List.of(slowing) : List.of(), false);
	}

}
