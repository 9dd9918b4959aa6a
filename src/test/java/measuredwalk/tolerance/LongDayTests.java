package measuredwalk.tolerance;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

import measuredwalk.signs.Overall;
import measuredwalk.signs.Severity;
import measuredwalk.signs.Sign;
import measuredwalk.signs.SignKind;
import measuredwalk.tolerance.LongDay.PlannedDay;
import measuredwalk.tolerance.LongDay.Why;
import org.junit.jupiter.api.Test;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

/** A long day is spread over more walks and the days around, within the limits. */
class LongDayTests {

	private static final LocalDate FIRST = LocalDate.of(2026, 1, 5);

	private static final LocalDate TODAY = FIRST.plusDays(20);

	private static final LocalDate SATURDAY = TODAY.plusDays(5);

	private final ToleranceModel model = new ToleranceModel();

	private final List<ToleranceEvent> journal = fineDays(20);

	@Test
	void noWalkOfALongDayIsLongerThanTheSuggestion() {
		double suggested = this.model.suggest(this.journal, TODAY).minutes();
		LongDay planned = plan(1.4 * usual());
		assertThat(onSaturday(planned).minutes()).isLessThanOrEqualTo(suggested);
		assertThat(onSaturday(planned).walks()).isGreaterThan(2);
		assertThat(planned.grantedMinutes()).isGreaterThan(usual());
		assertThat(planned.reasons()).contains(Why.MORE_WALKS_NOT_LONGER_ONES, Why.SHORTER_DAYS_AROUND);
	}

	@Test
	void theDaysAroundGiveUpWhatTheLongDayTakesButNotMoreThanARestDayWould() {
		LongDay planned = plan(1.3 * usual());
		List<PlannedDay> around = planned.days().stream().filter((day) -> !day.date().equals(SATURDAY)).toList();
		assertThat(around).extracting(PlannedDay::date)
			.containsExactly(SATURDAY.minusDays(2), SATURDAY.minusDays(1), SATURDAY.plusDays(1), SATURDAY.plusDays(2));
		assertThat(around).allSatisfy((day) -> assertThat(day.total()).isLessThan(usual())
			.isGreaterThanOrEqualTo(0.6 * usual() - day.walks()));
		double all = planned.days().stream().mapToDouble(PlannedDay::total).sum();
		assertThat(all).isLessThanOrEqualTo(5 * usual());
	}

	@Test
	void aDayFarAboveTheDogsOwnMeanIsNotGranted() {
		LongDay planned = plan(300);
		assertThat(planned.reasons()).contains(Why.NO_PEAK_DAY);
		assertThat(planned.wantedMinutes()).isEqualTo(300);
		assertThat(planned.grantedMinutes()).isLessThanOrEqualTo(1.5 * usual());
	}

	@Test
	void whatIsNoMoreThanUsualChangesNoOtherDay() {
		LongDay planned = plan(0.8 * usual());
		assertThat(planned.days()).hasSize(1);
		assertThat(planned.reasons()).containsExactly(Why.NO_MORE_THAN_USUAL, Why.THAT_MORNING_DECIDES);
		assertThat(planned.grantedMinutes()).isLessThanOrEqualTo(0.8 * usual());
	}

	@Test
	void aRestingDogIsNotPlannedALongDay() {
		Sign stiff = new Sign(SignKind.STIFFNESS, true, Severity.MODERATE, null, null, null, null);
		this.journal.add(new ToleranceEvent.MorningSeen(TODAY, List.of(stiff), null, Overall.WORSE, false));
		LongDay planned = plan(90);
		assertThat(planned.reasons()).contains(Why.NOT_NOW);
		Suggestion resting = this.model.suggest(this.journal, TODAY);
		assertThat(planned.grantedMinutes()).isLessThanOrEqualTo(resting.walks() * resting.minutes());
	}

	@Test
	void aDayLongAheadOrPastIsRefused() {
		assertThatThrownBy(() -> this.model.longDay(this.journal, TODAY, TODAY.plusDays(15), 60))
			.isInstanceOf(IllegalArgumentException.class)
			.hasMessageContaining("14 days");
		assertThatThrownBy(() -> this.model.longDay(this.journal, TODAY, TODAY.minusDays(1), 60))
			.isInstanceOf(IllegalArgumentException.class);
		assertThatThrownBy(() -> this.model.longDay(this.journal, TODAY, TODAY, 0))
			.isInstanceOf(IllegalArgumentException.class)
			.hasMessageContaining("minutes");
	}

	private double usual() {
		Suggestion today = this.model.suggest(this.journal, TODAY);
		return today.walks() * today.minutes();
	}

	private LongDay plan(double minutes) {
		return this.model.longDay(this.journal, TODAY, SATURDAY, minutes);
	}

	private static PlannedDay onSaturday(LongDay planned) {
		return planned.days().stream().filter((day) -> day.date().equals(SATURDAY)).findFirst().orElseThrow();
	}

	private static List<ToleranceEvent> fineDays(int days) {
		List<ToleranceEvent> journal = new ArrayList<>();
		journal.add(new ToleranceEvent.DogEnrolled(FIRST, new WalkPlan(20, 2, 6, 60), null, null, true, null));
		for (int day = 1; day < days; day++) {
			LocalDate date = FIRST.plusDays(day);
			journal.add(new ToleranceEvent.MorningSeen(date, List.of(), null, Overall.USUAL, false));
			journal.add(new ToleranceEvent.WalkTaken(date, null, 20, 20, 20, null, List.of(), false));
			journal.add(new ToleranceEvent.WalkTaken(date, null, 20, 20, 20, null, List.of(), false));
		}
		return journal;
	}

}
