package measuredwalk.suggestions;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;

import measuredwalk.signs.Severity;
import measuredwalk.signs.Sign;
import measuredwalk.signs.SignKind;
import measuredwalk.tolerance.DosingSetting;
import measuredwalk.tolerance.DosingSettings;
import measuredwalk.tolerance.Suggestion;
import measuredwalk.tolerance.ToleranceEvent;
import measuredwalk.tolerance.ToleranceModel;
import measuredwalk.tolerance.WalkPlan;
import org.junit.jupiter.api.Test;

import static org.assertj.core.api.Assertions.assertThat;

/** What is remembered never shows: every answer is the one of the whole journal. */
class FollowedDogsTests {

	private static final LocalDate FIRST = LocalDate.of(2026, 1, 5);

	private static final int DAYS = 30;

	private static final UUID DOG = UUID.randomUUID();

	private final ToleranceModel model = new ToleranceModel();

	private final FollowedDogs dogs = new FollowedDogs();

	private Suggestion remembered(ToleranceModel by, List<ToleranceEvent> history, LocalDate today) {
		FollowedDogs.Branch branch = this.dogs.until(today.minusDays(1), DOG, by, history);
		branch.rest().forEach(branch.course()::tell);
		return branch.course().suggest(today);
	}

	private static List<ToleranceEvent> enrolled() {
		return new ArrayList<>(
				List.of(new ToleranceEvent.DogEnrolled(FIRST, new WalkPlan(20, 2, 6, 45), null, null, true, null)));
	}

	private static ToleranceEvent walk(LocalDate date, int hour, double minutes, boolean sign) {
		List<Sign> signs = sign ? List.of(new Sign(SignKind.LAMENESS, true, Severity.MODERATE, null, null, null, null))
				: List.of();
		return new ToleranceEvent.WalkTaken(date, LocalTime.of(hour, 0), minutes, minutes, minutes, null, signs, false);
	}

	private static ToleranceEvent morning(LocalDate date) {
		return new ToleranceEvent.MorningSeen(date, List.of(), null, null, false);
	}

	private static List<ToleranceEvent> month() {
		List<ToleranceEvent> history = enrolled();
		for (int day = 1; day <= DAYS; day++) {
			LocalDate date = FIRST.plusDays(day);
			history.add(morning(date));
			history.add(walk(date, 8, 15 + day % 9, day % 7 == 0));
			history.add(walk(date, 17, 18 + day % 5, day % 11 == 0));
		}
		return history;
	}

	@Test
	void aDogFollowedFromMessageToMessageGetsTheSuggestionsOfItsWholeJournal() {
		List<ToleranceEvent> all = month();
		for (int known = 1; known <= all.size(); known++) {
			List<ToleranceEvent> history = all.subList(0, known);
			LocalDate today = history.get(known - 1).date();
			assertThat(remembered(this.model, history, today)).isEqualTo(this.model.suggest(history, today));
		}
	}

	@Test
	void aCorrectionOfAnEarlierDayCounts() {
		List<ToleranceEvent> history = month();
		LocalDate today = FIRST.plusDays(DAYS + 1);
		Suggestion before = remembered(this.model, history, today);
		history.set(history.size() - 8, walk(FIRST.plusDays(DAYS - 2), 8, 40, true));
		Suggestion after = remembered(this.model, history, today);
		assertThat(after).isEqualTo(this.model.suggest(history, today)).isNotEqualTo(before);
	}

	@Test
	void anotherRuleOfTheClinicCountsAtOnce() {
		List<ToleranceEvent> history = month();
		LocalDate today = FIRST.plusDays(DAYS + 1);
		Suggestion before = remembered(this.model, history, today);
		ToleranceModel other = new ToleranceModel(DosingSettings.standard().with(DosingSetting.TROUBLE_WHEN_NEW, 0.05));
		assertThat(remembered(other, history, today)).isEqualTo(other.suggest(history, today));
		assertThat(remembered(this.model, history, today)).isEqualTo(before);
	}

	@Test
	void eachDayOfALookBackIsThatOfTheWholeJournal() {
		List<ToleranceEvent> history = month();
		LocalDate today = FIRST.plusDays(DAYS);
		List<Suggestion> whole = SuggestedDays.of(this.dogs.until(LocalDate.MIN, DOG, this.model, history),
				today.minusDays(1), today);
		List<Suggestion> remembered = SuggestedDays.of(this.dogs.until(today.minusDays(1), DOG, this.model, history),
				today.minusDays(1), today);
		assertThat(remembered).isEqualTo(whole).hasSize(2);
	}

}
