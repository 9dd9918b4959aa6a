package measuredwalk.clinic.pages;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

import measuredwalk.household.Dog;
import measuredwalk.household.Households;
import measuredwalk.household.Medication;
import measuredwalk.household.Plan;
import measuredwalk.pictures.PictureDay;
import measuredwalk.suggestions.DogDays;
import org.springframework.stereotype.Component;

/** A dog's course, day by day. */
@Component
class Course {

	private final Households households;

	private final DogDays days;

	Course(Households households, DogDays days) {
		this.households = households;
		this.days = days;
	}

	/**
	 * The last days of a dog, today last.
	 * @param dog the dog
	 * @param days how many days at most
	 * @return the days from the first that is known
	 */
	List<CourseDay> lastDays(Dog dog, LocalDate today, int days) {
		return this.days.of(dog, today.minusDays(days - 1L), today)
			.stream()
			.map((day) -> new CourseDay(day.date(), day.suggestion(), day.walks(), day.morning(),
					changes(dog, day.date())))
			.toList();
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
