package measuredwalk.suggestions;

import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

import measuredwalk.household.Dog;
import measuredwalk.household.Households;
import measuredwalk.household.Plan;
import measuredwalk.journal.Journal;
import measuredwalk.tolerance.Calibration;
import measuredwalk.tolerance.Evidence;
import measuredwalk.tolerance.LongDay;
import measuredwalk.tolerance.Suggestion;
import measuredwalk.tolerance.ToleranceCourse;
import measuredwalk.tolerance.ToleranceEvent;
import measuredwalk.tolerance.ToleranceModel;
import measuredwalk.tolerance.WalkPlan;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * Today's suggestion for a dog, worked out from its journal by the dosing rule that the
 * clinic has set. Days gone by are read by the rule of today too.
 */
@Service
public class Suggestions {

	private final ClinicModel model;

	private final Households households;

	private final Journal journal;

	private final FollowedDogs dogs;

	private final Clock clock;

	Suggestions(ClinicModel model, Households households, Journal journal, FollowedDogs dogs, Clock clock) {
		this.dogs = dogs;
		this.model = model;
		this.households = households;
		this.journal = journal;
		this.clock = clock;
	}

	/**
	 * Today's suggestion by all that is known now.
	 * @param dog the dog
	 * @return the suggestion
	 */
	@Transactional(readOnly = true)
	public Suggestion today(Dog dog) {
		LocalDate today = day(dog);
		return course(dog, history(dog), today).suggest(today);
	}

	/**
	 * The chance that a walk of some length is too much today.
	 * @param dog the dog
	 * @param minutes its length in minutes, above 0
	 * @return the chance, in [0, 1]
	 */
	@Transactional(readOnly = true)
	public double chanceOfTrouble(Dog dog, double minutes) {
		LocalDate today = day(dog);
		return course(dog, history(dog), today).chances(today).ofTrouble(minutes);
	}

	/**
	 * How to spread a longer day.
	 * @param dog the dog
	 * @param day the day, today or at most 14 days ahead
	 * @param minutes minutes wished for on it, all walks together, above 0
	 * @return the plan; nothing is stored
	 * @throws IllegalArgumentException when the day or the minutes are out of range
	 */
	@Transactional(readOnly = true)
	public LongDay longDay(Dog dog, LocalDate day, double minutes) {
		return this.model.now().longDay(history(dog), day(dog), day, minutes);
	}

	/**
	 * What the journal of the last days shows.
	 * @param dog the dog
	 * @param days how many days to look back
	 * @return counts of walks and mornings that were told
	 */
	@Transactional(readOnly = true)
	public Evidence evidence(Dog dog, int days) {
		LocalDate today = day(dog);
		List<ToleranceEvent> history = history(dog);
		return ToleranceModel.evidence(course(dog, history, today), history, today, days);
	}

	/**
	 * Whether the chances that the model gave came true for a dog.
	 * @param dog the dog
	 * @return expected against seen signs over its whole history
	 */
	@Transactional(readOnly = true)
	public Calibration calibration(Dog dog) {
		return this.model.now().calibration(history(dog));
	}

	/**
	 * The suggestion of each morning from a day until today, each by what was known
	 * before that day's walks.
	 * @param dog the dog
	 * @param from the first day; days before the dog was taken on are left out
	 * @return one suggestion a day, the first day first
	 */
	@Transactional(readOnly = true)
	public List<Suggestion> days(Dog dog, LocalDate from) {
		LocalDate today = day(dog);
		LocalDate first = from.isBefore(yesterday(today)) ? LocalDate.MIN : yesterday(today);
		return SuggestedDays.of(this.dogs.until(first, dog.id(), this.model.now(), history(dog)), from, today);
	}

	/**
	 * What today's suggestion would be under another plan. Nothing is stored.
	 * @param dog the dog
	 * @param plan the plan to try
	 * @return the suggestion
	 */
	@Transactional(readOnly = true)
	public Suggestion underPlan(Dog dog, Plan plan) {
		LocalDate today = day(dog);
		List<ToleranceEvent> history = new ArrayList<>(history(dog));
		history.add(new ToleranceEvent.PlanChanged(today,
				new WalkPlan(plan.planMinutes(), plan.walksPerDay(), plan.minMinutes(), plan.maxMinutes())));
		return this.model.now().suggest(history, today);
	}

	/** The dog's course, told of its whole history. */
	private ToleranceCourse course(Dog dog, List<ToleranceEvent> history, LocalDate today) {
		FollowedDogs.Branch branch = this.dogs.until(yesterday(today), dog.id(), this.model.now(), history);
		branch.rest().forEach(branch.course()::tell);
		return branch.course();
	}

	/**
	 * As far as dogs are remembered. Yesterday is left to be told: answers about it still
	 * come, and the ideas of the day look back at it.
	 */
	private static LocalDate yesterday(LocalDate today) {
		return today.minusDays(1);
	}

	private LocalDate day(Dog dog) {
		return this.clock.instant().atZone(dog.household().timeZone()).toLocalDate();
	}

	/**
	 * All that is known of a dog, in the order in which the tolerance model takes it.
	 * @param dog the dog
	 * @return its history, beginning with its enrolment
	 */
	@Transactional(readOnly = true)
	public List<ToleranceEvent> history(Dog dog) {
		return new DogHistory(dog, this.model.rule()).events(this.households.plansOf(dog.id()),
				this.households.medicationsOf(dog.id()), this.journal.walks(dog.id()), this.journal.mornings(dog.id()));
	}

}
