package measuredwalk.escalation.course;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToIntFunction;
import java.util.stream.Collectors;

import measuredwalk.escalation.ReviewDesign;
import measuredwalk.journal.MorningEntry;
import measuredwalk.journal.WalkEntry;

/** A dog's days until today, with those of which nothing was told. */
final class DogCourse {

	/** What is usual is looked for before the last week, so that a flare is no usual. */
	private static final int USUAL_ENDS_DAYS_AGO = 7;

	private static final int USUAL_BEGINS_DAYS_AGO = 35;

	/** With fewer days told of, nothing is taken to be usual. */
	private static final int FEWEST_USUAL_DAYS = 7;

	private final List<CourseDay> days;

	private final LocalDate medicineChangedOn;

	private final List<BeliefDay> beliefs;

	private final ReviewDesign design;

	private DogCourse(List<CourseDay> days, LocalDate medicineChangedOn, List<BeliefDay> beliefs, ReviewDesign design) {
		this.design = design;
		this.days = days;
		this.medicineChangedOn = medicineChangedOn;
		this.beliefs = List.copyOf(beliefs);
	}

	/**
	 * The course that a journal tells.
	 * @param walks the walks that count
	 * @param mornings the mornings that count
	 * @param first the first day to look at
	 * @param today the last day
	 */
	static DogCourse of(List<WalkEntry> walks, List<MorningEntry> mornings, LocalDate first, LocalDate today) {
		Map<LocalDate, List<WalkEntry>> walksOf = walks.stream()
			.collect(Collectors.groupingBy((walk) -> walk.facts().date()));
		Map<LocalDate, MorningEntry> morningOf = mornings.stream()
			.collect(Collectors.toMap((morning) -> morning.facts().date(), Function.identity(), (one, other) -> other));
		List<CourseDay> days = new ArrayList<>();
		for (LocalDate day = first; !day.isAfter(today); day = day.plusDays(1)) {
			days.add(new CourseDay(day, walksOf.getOrDefault(day, List.of()), morningOf.get(day)));
		}
		return new DogCourse(days, first, List.of(), ReviewDesign.BALANCED);
	}

	/** The same days, when a medicine was changed on one of them. */
	DogCourse withMedicineChangedOn(LocalDate day) {
		return new DogCourse(this.days, day, this.beliefs, this.design);
	}

	/** The same days, with what the model believed on each morning. */
	DogCourse withBeliefs(List<BeliefDay> all) {
		return new DogCourse(this.days, this.medicineChangedOn, all, this.design);
	}

	/** The same days, to be looked at by charts of another design. */
	DogCourse withDesign(ReviewDesign chosen) {
		return new DogCourse(this.days, this.medicineChangedOn, this.beliefs, chosen);
	}

	/** How keen the charts are. */
	ReviewDesign design() {
		return this.design;
	}

	/** What the model believed, the oldest first; empty when that was not looked up. */
	List<BeliefDay> beliefs() {
		return this.beliefs;
	}

	/** The last change of a medicine, or the first day when there was none. */
	LocalDate medicineChangedOn() {
		return this.medicineChangedOn;
	}

	LocalDate today() {
		return this.days.get(this.days.size() - 1).date();
	}

	/** All days, the oldest first. */
	List<CourseDay> days() {
		return this.days;
	}

	/** A day by how long ago it was; empty before the course begins. */
	Optional<CourseDay> ago(int daysAgo) {
		int index = this.days.size() - 1 - daysAgo;
		return (index >= 0) ? Optional.of(this.days.get(index)) : Optional.empty();
	}

	/** Days that were told of, from some days ago to some days ago, the oldest first. */
	List<CourseDay> told(int fromDaysAgo, int toDaysAgo) {
		LocalDate from = today().minusDays(fromDaysAgo);
		LocalDate to = today().minusDays(toDaysAgo);
		return this.days.stream()
			.filter((day) -> day.told() && !day.date().isBefore(from) && !day.date().isAfter(to))
			.toList();
	}

	/** The dog's own usual: the median of a grade over four weeks before the last. */
	int usual(ToIntFunction<CourseDay> grade) {
		List<CourseDay> before = told(USUAL_BEGINS_DAYS_AGO, USUAL_ENDS_DAYS_AGO);
		if (before.size() < FEWEST_USUAL_DAYS) {
			return 0;
		}
		return before.stream()
			.map(grade::applyAsInt)
			.sorted(Comparator.naturalOrder())
			.skip((before.size() - 1) / 2)
			.findFirst()
			.orElse(0);
	}

	/**
	 * The run of days that ends with the last day told of, all of which are as asked.
	 * Days without news neither break nor lengthen it.
	 * @param newestDaysAgo how old the last day told of may be
	 */
	List<CourseDay> runUntilNow(Predicate<CourseDay> as, int newestDaysAgo) {
		List<CourseDay> run = new ArrayList<>();
		List<CourseDay> all = this.days.stream().filter(CourseDay::told).toList();
		for (int i = all.size() - 1; i >= 0 && as.test(all.get(i)); i--) {
			run.add(0, all.get(i));
		}
		boolean old = !run.isEmpty() && run.get(run.size() - 1).date().isBefore(today().minusDays(newestDaysAgo));
		return old ? List.of() : List.copyOf(run);
	}

}
