package measuredwalk.tolerance;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

import measuredwalk.signs.Overall;
import measuredwalk.signs.Severity;
import measuredwalk.signs.Sign;
import measuredwalk.signs.SignKind;
import org.junit.jupiter.api.Test;

import static org.assertj.core.api.Assertions.assertThat;

/** Each clinical limit, in a journal that makes it bind, names itself. */
class ClinicalLimitTests {

	private static final LocalDate FIRST = LocalDate.of(2026, 1, 5);

	private static final WalkPlan PLAN = new WalkPlan(20, 2, 6, 60);

	private final ToleranceModel model = new ToleranceModel();

	private final List<ToleranceEvent> journal = new ArrayList<>(List.of(enrolled(true, null)));

	@Test
	void badMorningMeansTwoDaysOfAtMostSixtyPercent() {
		fineDays(1, 20);
		double before = suggest(20).minutes();
		morning(21, Severity.MODERATE);
		assertThat(suggest(21).minutes()).isLessThanOrEqualTo(0.6 * before + 0.5);
		assertThat(suggest(21).advice()).isEqualTo(Advice.REST);
		assertThat(suggest(21).reasons()).contains(Reason.REST_AFTER_A_BAD_MORNING);
		fineDays(22, 22);
		assertThat(suggest(22).minutes()).isLessThanOrEqualTo(0.6 * before + 0.5);
	}

	@Test
	void wayBackIsByFifteenPercentADayAndLeadsBack() {
		fineDays(1, 20);
		double before = suggest(20).minutes();
		morning(21, Severity.MODERATE);
		double last = suggest(21).minutes();
		for (int day = 22; day <= 32; day++) {
			fineDays(day, day);
			double minutes = suggest(day).minutes();
			assertThat(minutes).isLessThanOrEqualTo(Math.max(last * 1.15, last + 1) + 0.5);
			last = minutes;
		}
		assertThat(last).isGreaterThanOrEqualTo(0.9 * before);
	}

	@Test
	void fineDaysGrowTheWalkByAboutTenPercentAWeekAndNotFaster() {
		fineDays(1, 29);
		double fourWeeks = suggest(29).minutes();
		assertThat(fourWeeks).isGreaterThan(20).isLessThanOrEqualTo(20 * Math.pow(1.15, 5) + 1);
		assertThat(suggest(3).reasons()).isNotEmpty();
	}

	@Test
	void mildlyWorseMorningAllowsNoNewLength() {
		fineDays(1, 20);
		double best = suggest(20).minutes();
		morning(21, Severity.MILD);
		fineDays(22, 22);
		assertThat(suggest(22).minutes()).isLessThanOrEqualTo(best);
	}

	@Test
	void anEmergencyIsNamedBeforeTheWalksOfTodayThatAreDone() {
		fineDays(1, 10);
		Sign collapse = new Sign(SignKind.COLLAPSE, true, null, null, null, null, null);
		for (int hour : List.of(8, 17)) {
			this.journal.add(new ToleranceEvent.WalkTaken(FIRST.plusDays(11), java.time.LocalTime.of(hour, 0), 10, 10,
					10, null, (hour == 17) ? List.of(collapse) : List.of(), false));
		}
		assertThat(suggest(11).reasons()).startsWith(Reason.EMERGENCY_SIGNS).contains(Reason.WALKS_OF_TODAY_DONE);
	}

	@Test
	void newMedicineHoldsTheWalkForTwoWeeks() {
		fineDays(1, 10);
		double before = suggest(10).minutes();
		this.journal.add(new ToleranceEvent.MedicationChanged(FIRST.plusDays(11),
				ToleranceEvent.MedicationChanged.Change.STARTED, "nsaid"));
		fineDays(11, 24);
		assertThat(suggest(24).minutes()).isLessThanOrEqualTo(before);
		assertThat(suggest(24).reasons()).contains(Reason.HOLD_AFTER_NEW_MEDICINE);
	}

	@Test
	void ownerWhoNeverTellsOfASignStaysUnderTheCeiling() {
		fineDays(1, 120);
		assertThat(suggest(120).minutes()).isLessThanOrEqualTo(30);
		assertThat(suggest(120).reasons()).contains(Reason.FAR_ABOVE_THE_PLAN);
	}

	@Test
	void emergencySignGivesEmergencyAdviceAndTheShortestWalk() {
		fineDays(1, 5);
		this.journal.add(new ToleranceEvent.MorningSeen(FIRST.plusDays(6),
				List.of(Sign.seen(SignKind.NON_WEIGHT_BEARING)), null, Overall.WORSE, false));
		assertThat(suggest(6).advice()).isEqualTo(Advice.EMERGENCY);
		assertThat(suggest(6).reasons().get(0)).isEqualTo(Reason.EMERGENCY_SIGNS);
		assertThat(suggest(6).minutes()).isLessThanOrEqualTo(5);
	}

	@Test
	void dogAfterSurgeryOrStillGrowingGetsThePlanOnly() {
		this.journal.set(0, enrolled(true, FIRST.minusDays(30)));
		assertThat(suggest(1).minutes()).isEqualTo(20);
		assertThat(suggest(1).reasons()).containsExactly(Reason.ONLY_THE_PLAN_AFTER_SURGERY);
		assertThat(suggest(60).reasons()).doesNotContain(Reason.ONLY_THE_PLAN_AFTER_SURGERY);
		this.journal.set(0, enrolled(false, null));
		assertThat(suggest(1).reasons()).containsExactly(Reason.ONLY_THE_PLAN_WHILE_GROWING);
	}

	@Test
	void longSilenceNeverEndsInNothing() {
		fineDays(1, 10);
		Suggestion later = suggest(300);
		assertThat(later.minutes()).isGreaterThanOrEqualTo(PLAN.minMinutes());
		assertThat(later.toleranceHigh() / later.toleranceLow()).isLessThan(6);
		assertThat(later.reasons()).contains(Reason.NOT_HEARD_FOR_LONG);
	}

	@Test
	void walksOfTheDayAreCountedDown() {
		fineDays(1, 3);
		this.journal.add(walk(4, List.of()));
		assertThat(suggest(4).walks()).isEqualTo(1);
		this.journal.add(walk(4, List.of()));
		assertThat(suggest(4).walks()).isZero();
		assertThat(suggest(4).reasons().get(0)).isEqualTo(Reason.WALKS_OF_TODAY_DONE);
	}

	private static ToleranceEvent enrolled(boolean grown, LocalDate surgery) {
		return new ToleranceEvent.DogEnrolled(FIRST, PLAN, null, null, grown, surgery);
	}

	private void fineDays(int from, int to) {
		for (int day = from; day <= to; day++) {
			this.journal
				.add(new ToleranceEvent.MorningSeen(FIRST.plusDays(day), List.of(), null, Overall.USUAL, false));
			if (day > from || from == 1 || from == to) {
				this.journal.add(walk(day, List.of()));
			}
		}
	}

	private void morning(int day, Severity severity) {
		Sign stiff = new Sign(SignKind.STIFFNESS, true, severity, null, null, null, null);
		this.journal
			.add(new ToleranceEvent.MorningSeen(FIRST.plusDays(day), List.of(stiff), null, Overall.WORSE, false));
	}

	private static ToleranceEvent walk(int day, List<Sign> signs) {
		return new ToleranceEvent.WalkTaken(FIRST.plusDays(day), null, 20, 20, 20, null, signs, false);
	}

	private Suggestion suggest(int day) {
		LocalDate date = FIRST.plusDays(day);
		return this.model.suggest(this.journal.stream().filter((event) -> !event.date().isAfter(date)).toList(), date);
	}

}
