package measuredwalk.escalation.course;

import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;

import measuredwalk.escalation.Evidence;
import measuredwalk.signs.Basis;
import measuredwalk.signs.Grade;

/** All rules about a dog's course, in one place. */
public final class CourseRules {

	/** News older than this says nothing of how the dog is now. Ours, no source. */
	private static final int NEWEST_DAYS_AGO = 2;

	private static final int UNSETTLED_DAYS = 3;

	private static final int LATEST_DAYS = 7;

	/** One bad day told twice is no course. Ours, no source. */
	private static final int FEWEST_DAYS = 3;

	private static final int WEEK = 7;

	/** Half a grade of lameness from one week to the next. Ours, no source. */
	private static final double CLIMB = 0.5;

	private static final double LONGEST_STIFF_MINUTES = 60;

	private static final List<CourseRule> ALL = List.of(
			new CourseRule("flare-not-settling",
					"worse than the dog's own usual on every day told of, for 72 h without getting better, or at the"
							+ " latest on the eighth day",
					Basis.of(Grade.H,
							"Thomas 2021, Osteoarthritis Cartilage: flares last a median of 5 days, quartiles 3 and 8;"
									+ " Parry 2019: 8 days"),
					1, CourseRules::flareNotSettling),
			new CourseRule("lameness-climbing",
					"mean lameness of this week at least half a grade above the week before",
					Basis.of(Grade.C, "expert opinion; the half grade a week is ours"), 0.5,
					CourseRules::lamenessClimbing),
			new CourseRule("mornings-missed-after-a-bad-one",
					"two mornings without an answer after one that was worse than usual",
					Basis.of(Grade.C, "common practice, no source"), 1, CourseRules::morningsMissed),
			new CourseRule("stiffness-not-easing", "stiff for more than 60 minutes this morning or yesterday",
					Basis.of(Grade.C, "expert opinion, no source"), LONGEST_STIFF_MINUTES,
					CourseRules::stiffnessNotEasing),
			new CourseRule("lameness-beyond-a-day", "lameness above the dog's own usual for 24 h and more",
					Basis.of(Grade.C, "expert opinion, no source"), 1, CourseRules::lamenessBeyondADay),
			new CourseRule("signs-piling-up", "the chart of the daily burden is over its limit", Basis.of(Grade.C,
					"Page 1954, Biometrika 41:100; exact run lengths by Brook and Evans 1972, Biometrika 59:539"), 1,
					PilingUp::in),
			new CourseRule("walks-staying-cut", "the chart of the believed tolerance is over its limit",
					Basis.of(Grade.S,
							"Page 1954, Biometrika 41:100; reference for a loss of a fifth, limit set by simulation"),
					1, StayingCut::in));

	private CourseRules() {
	}

	/**
	 * All rules.
	 * @return the rules
	 */
	public static List<CourseRule> all() {
		return ALL;
	}

	/** After 72 hours without getting better, and at the latest on the eighth day. */
	private static Optional<Finding> flareNotSettling(DogCourse course) {
		int usual = course.usual(CourseDay::grade);
		List<CourseDay> run = course.runUntilNow((day) -> day.saidWorse() || day.grade() > usual, NEWEST_DAYS_AGO);
		if (run.size() < FEWEST_DAYS) {
			return Optional.empty();
		}
		CourseDay first = run.get(0);
		CourseDay last = run.get(run.size() - 1);
		long days = ChronoUnit.DAYS.between(first.date(), last.date());
		boolean late = days >= LATEST_DAYS;
		boolean unsettled = days >= UNSETTLED_DAYS && last.grade() >= first.grade();
		return (late || unsettled) ? Optional.of(new Finding(
				"Flare not settling: worse than this dog's usual on every day told of, for " + days + " days",
				late ? 2 : 1, evidence(run))) : Optional.empty();
	}

	private static Optional<Finding> lamenessClimbing(DogCourse course) {
		List<CourseDay> before = course.told(2 * WEEK - 1, WEEK);
		List<CourseDay> now = course.told(WEEK - 1, 0);
		if (before.size() < FEWEST_DAYS || now.size() < FEWEST_DAYS) {
			return Optional.empty();
		}
		double climb = mean(now) - mean(before);
		return (climb >= CLIMB)
				? Optional.of(new Finding(
						String.format(java.util.Locale.ROOT,
								"Lameness climbing over two weeks: mean grade %.1f this week, %.1f the week before",
								mean(now), mean(before)),
						climb, evidence(now.stream().filter((day) -> day.lameness() > 0).toList())))
				: Optional.empty();
	}

	private static double mean(List<CourseDay> days) {
		return days.stream().mapToInt(CourseDay::lameness).average().orElse(0);
	}

	/** Today's morning may still be told of, so the two before it are looked at. */
	private static Optional<Finding> morningsMissed(DogCourse course) {
		Optional<CourseDay> bad = course.ago(3).filter(CourseDay::badMorning);
		boolean missed = silentMorning(course, 2) && silentMorning(course, 1);
		return (bad.isPresent() && missed)
				? Optional.of(new Finding("Two morning check-ins missed after a bad morning", 1, bad.get().evidence()))
				: Optional.empty();
	}

	private static boolean silentMorning(DogCourse course, int daysAgo) {
		return course.ago(daysAgo).map((day) -> day.morning() == null).orElse(false);
	}

	private static Optional<Finding> stiffnessNotEasing(DogCourse course) {
		return course.told(1, 0)
			.stream()
			.filter((day) -> day.stiffMinutes().orElse(0.0) > LONGEST_STIFF_MINUTES)
			.reduce((earlier, later) -> later)
			.map((day) -> new Finding("Stiffness that did not ease within 60 minutes: "
					+ Math.round(day.stiffMinutes().orElse(0.0)) + " minutes", day.stiffMinutes().orElse(0.0),
					day.evidence()));
	}

	private static Optional<Finding> lamenessBeyondADay(DogCourse course) {
		int usual = course.usual(CourseDay::lameness);
		List<CourseDay> run = course.runUntilNow((day) -> day.lameness() > usual, NEWEST_DAYS_AGO);
		if (run.size() < 2) {
			return Optional.empty();
		}
		Instant first = run.get(0).toldAt().get(0);
		List<Instant> last = run.get(run.size() - 1).toldAt();
		Duration seenFor = Duration.between(first, last.get(last.size() - 1));
		return (seenFor.compareTo(Duration.ofHours(24)) >= 0)
				? Optional.of(new Finding("Lameness above this dog's usual beyond 24 hours",
						run.stream().mapToInt(CourseDay::lameness).max().orElse(0), evidence(run)))
				: Optional.empty();
	}

	private static List<Evidence> evidence(List<CourseDay> days) {
		return days.stream().flatMap((day) -> day.evidence().stream()).toList();
	}

}
