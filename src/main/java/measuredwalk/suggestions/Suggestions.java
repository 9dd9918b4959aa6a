package measuredwalk.suggestions;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;

import measuredwalk.household.Dog;
import measuredwalk.household.Households;
import measuredwalk.journal.Journal;
import measuredwalk.tolerance.Suggestion;
import measuredwalk.tolerance.ToleranceEvent;
import measuredwalk.tolerance.ToleranceModel;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Today's suggestion for a dog, worked out afresh from its journal. */
@Service
public class Suggestions {

	private final ToleranceModel model = new ToleranceModel();

	private final Households households;

	private final Journal journal;

	private final Clock clock;

	Suggestions(Households households, Journal journal, Clock clock) {
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
		LocalDate today = this.clock.instant().atZone(dog.household().timeZone()).toLocalDate();
		return this.model.suggest(history(dog), today);
	}

	/**
	 * All that is known of a dog, in the order in which the tolerance model takes it.
	 * @param dog the dog
	 * @return its history, beginning with its enrolment
	 */
	@Transactional(readOnly = true)
	public List<ToleranceEvent> history(Dog dog) {
		return new DogHistory(dog).events(this.households.plansOf(dog.id()), this.households.medicationsOf(dog.id()),
				this.journal.walks(dog.id()), this.journal.mornings(dog.id()));
	}

}
