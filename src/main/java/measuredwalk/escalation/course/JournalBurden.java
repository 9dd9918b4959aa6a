package measuredwalk.escalation.course;

import java.time.LocalDate;
import java.util.List;

import measuredwalk.escalation.BurdenDay;
import measuredwalk.escalation.BurdenDays;
import measuredwalk.household.Dog;
import measuredwalk.journal.Journal;
import org.springframework.stereotype.Component;

/** Reads the burden of a dog's days from its journal. */
@Component
class JournalBurden implements BurdenDays {

	private final Journal journal;

	JournalBurden(Journal journal) {
		this.journal = journal;
	}

	@Override
	public List<BurdenDay> of(Dog dog, LocalDate until, int days) {
		return course(dog, until, days).stream()
			.map((day) -> new BurdenDay(day.date(), day.told(), day.grade(), day.minutes()))
			.toList();
	}

	@Override
	public int flares(Dog dog, LocalDate until, int days) {
		return Flares.in(course(dog, until, days));
	}

	private List<CourseDay> course(Dog dog, LocalDate until, int days) {
		LocalDate first = until.minusDays(days - 1L);
		LocalDate known = dog.enrolledOn().isAfter(first) ? dog.enrolledOn() : first;
		return DogCourse
			.of(this.journal.walks(dog.id()), this.journal.mornings(dog.id()), known.isAfter(until) ? until : known,
					until)
			.days();
	}

}
