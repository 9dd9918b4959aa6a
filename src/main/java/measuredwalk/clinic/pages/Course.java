package measuredwalk.clinic.pages;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

import measuredwalk.household.Dog;
import measuredwalk.household.Households;
import measuredwalk.household.Medication;
import measuredwalk.household.Plan;
import measuredwalk.journal.Journal;
import measuredwalk.journal.MorningEntry;
import measuredwalk.journal.MorningFacts;
import measuredwalk.journal.WalkEntry;
import measuredwalk.journal.WalkFacts;
import measuredwalk.pictures.PictureDay;
import measuredwalk.suggestions.Suggestions;
import measuredwalk.tolerance.Suggestion;
import org.springframework.stereotype.Component;

/** A dog's course, day by day. */
@Component
class Course {

	private final Households households;

	private final Journal journal;

	private final Suggestions suggestions;

	Course(Households households, Journal journal, Suggestions suggestions) {
		this.households = households;
		this.journal = journal;
		this.suggestions = suggestions;
	}

	/**
	 * The last days of a dog, today last.
	 * @param dog the dog
	 * @param days how many days at most
	 * @return the days from the first that is known
	 */
	List<CourseDay> lastDays(Dog dog, LocalDate today, int days) {
		LocalDate from = today.minusDays(days - 1L);
		Map<LocalDate, Suggestion> suggested = this.suggestions.days(dog, from)
			.stream()
			.collect(Collectors.toMap(Suggestion::date, Function.identity()));
		Map<LocalDate, List<WalkFacts>> walks = this.journal.walks(dog.id())
			.stream()
			.map(WalkEntry::facts)
			.collect(Collectors.groupingBy(WalkFacts::date));
		Map<LocalDate, MorningLook> mornings = this.journal.mornings(dog.id())
			.stream()
			.map(MorningEntry::facts)
			.collect(Collectors.toMap(MorningFacts::date, MorningLook::of, (first, later) -> later));
		List<CourseDay> course = new ArrayList<>();
		for (LocalDate day = from; !day.isAfter(today); day = day.plusDays(1)) {
			if (suggested.containsKey(day)) {
				course.add(new CourseDay(day, suggested.get(day), walks.getOrDefault(day, List.of()), mornings.get(day),
						changes(dog, day)));
			}
		}
		return List.copyOf(course);
	}

	private List<CourseDay.Change> changes(Dog dog, LocalDate day) {
		List<CourseDay.Change> changes = new ArrayList<>();
		this.households.plansOf(dog.id())
			.stream()
			.filter((plan) -> plan.from().equals(day))
			.forEach((plan) -> changes.add(new CourseDay.Change(PictureDay.ChangeKind.PLAN, words(plan))));
		for (Medication medicine : this.households.medicationsOf(dog.id())) {
			if (medicine.startedOn().equals(day)) {
				changes.add(new CourseDay.Change(PictureDay.ChangeKind.MEDICINE,
						medicine.kind() + (medicine.knownAtEnrolment() ? " given already" : " started")));
			}
			if (day.equals(medicine.stoppedOn())) {
				changes.add(new CourseDay.Change(PictureDay.ChangeKind.MEDICINE, medicine.kind() + " stopped"));
			}
		}
		return changes;
	}

	private static String words(Plan plan) {
		return "plan " + Wording.dose(plan.walksPerDay(), plan.planMinutes()) + ", limits "
				+ Wording.figure(plan.minMinutes()) + " to " + Wording.figure(plan.maxMinutes());
	}

}
