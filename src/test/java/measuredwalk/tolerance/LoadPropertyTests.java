package measuredwalk.tolerance;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

import measuredwalk.signs.Sign;
import measuredwalk.signs.SignKind;
import measuredwalk.tolerance.ToleranceEvent.DogEnrolled;
import measuredwalk.tolerance.ToleranceEvent.WalkTaken;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

import static org.assertj.core.api.Assertions.assertThat;

/** What a harder walk may do to a suggestion, and what it may never do. */
class LoadPropertyTests {

	private static final LocalDate DAY = LocalDate.of(2026, 3, 14);

	private final ToleranceModel model = new ToleranceModel();

	@Provide
	Arbitrary<List<ToleranceEvent>> journals() {
		return Journals.journals();
	}

	@Property(tries = 120)
	void aLoadOfYesterdayNeverRaisesTodaysWalk(@ForAll("journals") List<ToleranceEvent> journal,
			@ForAll @DoubleRange(min = 1.05, max = 4) double factor) {
		ToleranceEvent last = journal.get(journal.size() - 1);
		LocalDate today = (last instanceof WalkTaken) ? last.date().plusDays(1) : last.date();
		List<ToleranceEvent> harder = harder(journal, factor, (walk) -> walk.date().equals(today.minusDays(1)));
		assertThat(this.model.suggest(harder, today).minutes())
			.isLessThanOrEqualTo(this.model.suggest(journal, today).minutes());
	}

	@Property(tries = 120)
	void aLoadOfTodayNeverRaisesWhatIsLeft(@ForAll("journals") List<ToleranceEvent> journal,
			@ForAll @DoubleRange(min = 1.05, max = 4) double factor,
			@ForAll @DoubleRange(min = 0.4, max = 1.5) double share) {
		LocalDate today = journal.get(journal.size() - 1).date();
		double minutes = share * this.model.suggest(journal, today).minutes();
		List<ToleranceEvent> plain = new ArrayList<>(journal);
		plain.add(walk(today, minutes, List.of(), Load.USUAL));
		assertThat(left(harder(plain, factor, (walk) -> walk.date().equals(today)), today))
			.isLessThanOrEqualTo(left(plain, today));
	}

	private double left(List<ToleranceEvent> journal, LocalDate today) {
		return this.model.suggest(journal, today).minutes();
	}

	@Property(tries = 80)
	void walksThatWentCleanSayNoMoreWithALoadThanWithout(@ForAll("journals") List<ToleranceEvent> journal,
			@ForAll @DoubleRange(min = 1.05, max = 4) double factor) {
		List<ToleranceEvent> clean = new ArrayList<>(journal);
		clean.replaceAll((event) -> (event instanceof WalkTaken walk) ? new WalkTaken(walk.date(), walk.time(),
				walk.minutes(), walk.minutesLow(), walk.minutesHigh(), null, List.of(), walk.late()) : event);
		LocalDate tomorrow = journal.get(journal.size() - 1).date().plusDays(1);
		Suggestion plain = this.model.suggest(clean, tomorrow);
		Suggestion loaded = this.model.suggest(harder(clean, factor, (walk) -> true), tomorrow);
		assertThat(loaded.minutes()).isEqualTo(plain.minutes());
		assertThat(loaded.toleranceMedian()).isEqualTo(plain.toleranceMedian());
	}

	@Example
	void aHarderWalkLeavesLessForTheRestOfTheDayAndIsNamed() {
		// 15 minutes count for 25.2.
		Load hillsAndPlay = new Load(1, 1.2, 1, 1, 1.4, 1);
		Suggestion plain = this.model.suggest(day(15, List.of(), Load.USUAL), DAY);
		Suggestion loaded = this.model.suggest(day(15, List.of(), hillsAndPlay), DAY);
		assertThat(plain.minutes() - loaded.minutes()).isBetween(10.0, 11.0);
		assertThat(loaded.reasons()).containsSubsequence(Reason.EARLIER_WALK_TODAY, Reason.HARDER_WALK_COUNTS_MORE);
		assertThat(plain.reasons()).doesNotContain(Reason.HARDER_WALK_COUNTS_MORE);
	}

	@Example
	void aLoadOfTheLastDaysIsNamedLastOfAll() {
		List<Reason> reasons = this.model.suggest(day(18, List.of(), new Load(1, 1.2, 1, 1, 1, 1)), DAY.plusDays(2))
			.reasons();
		assertThat(reasons).endsWith(Reason.HARDER_WALK_COUNTS_MORE);
		assertThat(this.model.suggest(day(18, List.of(), new Load(1, 1.2, 1, 1, 1, 1)), DAY.plusDays(5)).reasons())
			.doesNotContain(Reason.HARDER_WALK_COUNTS_MORE);
	}

	@Example
	void aSignOnAHarderWalkIsExplainedInPartOnceTheNextDayIsOver() {
		List<Sign> slowing = List.of(new Sign(SignKind.SLOWING, true, null, null, null, null, 14.0));
		LocalDate later = DAY.plusDays(3);
		Suggestion plain = this.model.suggest(day(18, slowing, Load.USUAL), later);
		Suggestion loaded = this.model.suggest(day(18, slowing, new Load(1.3, 1.2, 1, 1, 1, 1)), later);
		assertThat(loaded.toleranceMedian()).isGreaterThan(plain.toleranceMedian());
	}

	private static List<ToleranceEvent> day(double minutes, List<Sign> signs, Load load) {
		return List.of(new DogEnrolled(DAY, new WalkPlan(20, 2, 6, 60), null, null, true, null),
				walk(DAY, minutes, signs, load));
	}

	private static WalkTaken walk(LocalDate date, double minutes, List<Sign> signs, Load load) {
		return new WalkTaken(date, LocalTime.of(8, 0), minutes, minutes, minutes, null, signs, false, load);
	}

	private static List<ToleranceEvent> harder(List<ToleranceEvent> journal, double factor,
			Predicate<WalkTaken> which) {
		List<ToleranceEvent> harder = new ArrayList<>(journal);
		harder.replaceAll(
				(event) -> (event instanceof WalkTaken walk && which.test(walk))
						? new WalkTaken(walk.date(), walk.time(), walk.minutes(), walk.minutesLow(), walk.minutesHigh(),
								walk.distanceMetres(), walk.signs(), walk.late(), new Load(factor, 1, 1, 1, 1, 1))
						: event);
		return harder;
	}

}
