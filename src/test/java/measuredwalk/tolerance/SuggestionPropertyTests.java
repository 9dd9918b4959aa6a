package measuredwalk.tolerance;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

import measuredwalk.signs.Overall;
import measuredwalk.signs.Sign;
import measuredwalk.tolerance.ToleranceEvent.MorningSeen;
import measuredwalk.tolerance.ToleranceEvent.WalkTaken;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

/** What must hold for any journal. */
class SuggestionPropertyTests {

	private final ToleranceModel model = new ToleranceModel();

	@Provide
	Arbitrary<List<ToleranceEvent>> journals() {
		return Journals.journals();
	}

	@Provide
	Arbitrary<Sign> signs() {
		return Journals.signs();
	}

	@Property(tries = 80)
	void anyJournalGivesAFiniteSuggestionWithinThePlan(@ForAll("journals") List<ToleranceEvent> journal) {
		WalkPlan plan = plan(journal);
		Suggestion suggestion = suggest(journal);
		assertThat(suggestion.minutes()).isFinite().isBetween(plan.minMinutes(), plan.maxMinutes());
		assertThat(suggestion.minutesLow()).isLessThanOrEqualTo(suggestion.minutes());
		assertThat(suggestion.minutesHigh()).isBetween(suggestion.minutes(), plan.maxMinutes());
		assertThat(suggestion.chanceOfTrouble()).isBetween(0.0, 1.0);
		assertThat(suggestion.toleranceLow()).isLessThan(suggestion.toleranceMedian());
		assertThat(suggestion.toleranceHigh()).isGreaterThan(suggestion.toleranceMedian());
		assertThat(suggestion.reasons()).isNotEmpty().doesNotHaveDuplicates();
	}

	@Property(tries = 80)
	void aFurtherSignYesterdayNeverRaisesTodaysWalk(@ForAll("journals") List<ToleranceEvent> journal,
			@ForAll("signs") Sign sign) {
		List<ToleranceEvent> worse = changed(journal, last(journal).minusDays(1), (walk) -> withSign(walk, sign));
		assertThat(suggest(worse).minutes()).isLessThanOrEqualTo(suggest(journal).minutes());
	}

	@Property(tries = 80)
	void aFurtherSignThisMorningNeverRaisesTodaysWalk(@ForAll("journals") List<ToleranceEvent> journal,
			@ForAll("signs") Sign sign) {
		List<ToleranceEvent> worse = new ArrayList<>(journal);
		worse.replaceAll((event) -> (event instanceof MorningSeen morning && morning.date().equals(last(journal)))
				? withSign(morning, sign) : event);
		assertThat(suggest(worse).minutes()).isLessThanOrEqualTo(suggest(journal).minutes());
	}

	@Property(tries = 150)
	void aLongerCleanWalkNeverLowersTheNext(@ForAll("journals") List<ToleranceEvent> journal,
			@ForAll @DoubleRange(min = 0.3, max = 3) double share,
			@ForAll @DoubleRange(min = 1.05, max = 3) double longer) {
		LocalDate today = last(journal);
		double minutes = share * suggest(journal).minutes();
		assertThat(afterCleanDay(journal, today, longer * minutes))
			.isGreaterThanOrEqualTo(afterCleanDay(journal, today, minutes));
	}

	private double afterCleanDay(List<ToleranceEvent> journal, LocalDate day, double minutes) {
		List<ToleranceEvent> longer = new ArrayList<>(journal);
		longer.add(new WalkTaken(day, null, minutes, minutes, minutes, null, List.of(), false));
		longer.add(new MorningSeen(day.plusDays(1), List.of(), null, Overall.USUAL, false));
		return this.model.suggest(longer, day.plusDays(1)).minutes();
	}

	@Property(tries = 50)
	void theOrderInWhichADayIsToldDoesNotMatter(@ForAll("journals") List<ToleranceEvent> journal,
			@ForAll Random random) {
		List<ToleranceEvent> shuffled = new ArrayList<>(journal.subList(0, 1));
		for (LocalDate date = Journals.FIRST; !date.isAfter(last(journal)); date = date.plusDays(1)) {
			LocalDate day = date;
			List<ToleranceEvent> told = new ArrayList<>(
					journal.stream().skip(1).filter((event) -> event.date().equals(day)).toList());
			Collections.shuffle(told, random);
			shuffled.addAll(told);
		}
		assertThat(this.model.suggest(shuffled, last(journal))).isEqualTo(suggest(journal));
	}

	@Property(tries = 50)
	void aCourseThatIsAskedEveryDayAnswersAsTheWholeJournalDoes(@ForAll("journals") List<ToleranceEvent> journal) {
		ToleranceCourse course = this.model.follow(journal.subList(0, 1));
		LocalDate asked = Journals.FIRST;
		for (ToleranceEvent event : journal.subList(1, journal.size())) {
			while (asked.isBefore(event.date())) {
				course.suggest(asked);
				asked = asked.plusDays(1);
			}
			course.tell(event);
			course.suggest(event.date());
		}
		assertThat(course.suggest(last(journal).plusDays(1)))
			.isEqualTo(this.model.suggest(journal, last(journal).plusDays(1)));
	}

	@Property(tries = 40)
	void silenceNeverRaisesTheWalk(@ForAll("journals") List<ToleranceEvent> journal) {
		double minutes = suggest(journal).minutes();
		for (int days = 2; days < 60; days += 9) {
			double later = this.model.suggest(journal, last(journal).plusDays(days)).minutes();
			assertThat(later).isLessThanOrEqualTo(
					Math.max(minutes, this.model.suggest(journal, last(journal).plusDays(1)).minutes()));
		}
	}

	@Property(tries = 40)
	void beliefScalesWithTheMinutes(@ForAll("journals") List<ToleranceEvent> journal) {
		List<ToleranceEvent> plain = scaled(journal, 1);
		List<ToleranceEvent> bigger = scaled(journal, 1.5);
		// The grid ends at 3 and 240 minutes, and what lies beyond does not scale.
		Assume.that(suggest(plain).toleranceLow() > 8 && suggest(bigger).toleranceHigh() < 90);
		double ratio = suggest(bigger).toleranceMedian() / suggest(plain).toleranceMedian();
		assertThat(ratio).isCloseTo(1.5, within(0.03));
	}

	private static List<ToleranceEvent> scaled(List<ToleranceEvent> journal, double factor) {
		List<ToleranceEvent> scaled = new ArrayList<>(journal);
		double toTwenty = 20 / plan(journal).planMinutes() * factor;
		int walks = plan(journal).walksPerDay();
		scaled.replaceAll((event) -> {
			if (event instanceof ToleranceEvent.DogEnrolled dog) {
				return new ToleranceEvent.DogEnrolled(dog.date(), new WalkPlan(20 * factor, walks, 1, 100), null, null,
						true, null);
			}
			return (event instanceof WalkTaken walk) ? withoutTimes(longer(walk, toTwenty)) : event;
		});
		return scaled;
	}

	/** An onset is a minute with a fixed window, which does not scale. */
	private static WalkTaken withoutTimes(WalkTaken walk) {
		return withSigns(walk, walk.signs().stream().map((sign) -> Sign.seen(sign.kind())).toList());
	}

	private Suggestion suggest(List<ToleranceEvent> journal) {
		return this.model.suggest(journal, last(journal));
	}

	private static LocalDate last(List<ToleranceEvent> journal) {
		LocalDate last = journal.get(journal.size() - 1).date();
		boolean walked = journal.get(journal.size() - 1) instanceof WalkTaken;
		return walked ? last.plusDays(1) : last;
	}

	private static WalkPlan plan(List<ToleranceEvent> journal) {
		return ((ToleranceEvent.DogEnrolled) journal.get(0)).plan();
	}

	private static List<ToleranceEvent> changed(List<ToleranceEvent> journal, LocalDate day,
			java.util.function.UnaryOperator<WalkTaken> change) {
		List<ToleranceEvent> changed = new ArrayList<>(journal);
		changed.replaceAll(
				(event) -> (event instanceof WalkTaken walk && walk.date().equals(day)) ? change.apply(walk) : event);
		return changed;
	}

	private static WalkTaken withSign(WalkTaken walk, Sign sign) {
		List<Sign> signs = new ArrayList<>(walk.signs());
		signs.add(sign);
		return withSigns(walk, signs);
	}

	private static WalkTaken withSigns(WalkTaken walk, List<Sign> signs) {
		return new WalkTaken(walk.date(), walk.time(), walk.minutes(), walk.minutesLow(), walk.minutesHigh(),
				walk.distanceMetres(), signs, walk.late());
	}

	private static MorningSeen withSign(MorningSeen morning, Sign sign) {
		List<Sign> signs = new ArrayList<>(morning.signs());
		signs.add(sign);
		return new MorningSeen(morning.date(), signs, morning.stiffMinutes(), morning.overall(), morning.late());
	}

	private static WalkTaken longer(WalkTaken walk, double factor) {
		return new WalkTaken(walk.date(), walk.time(), walk.minutes() * factor, walk.minutesLow() * factor,
				walk.minutesHigh() * factor, walk.distanceMetres(), walk.signs(), walk.late());
	}

}
