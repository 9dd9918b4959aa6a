package measuredwalk.suggestions;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

import measuredwalk.household.Dog;
import measuredwalk.household.Households;
import measuredwalk.journal.Journal;
import measuredwalk.journal.MorningEntry;
import measuredwalk.journal.MorningFacts;
import measuredwalk.journal.WalkEntry;
import measuredwalk.journal.WalkFacts;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** A dog's days, each with its suggestion and what was told; one look at the journal. */
@Service
public class DogDays {

	private final ClinicModel model;

	private final Households households;

	private final Journal journal;

	private final FollowedDogs dogs;

	DogDays(ClinicModel model, Households households, Journal journal, FollowedDogs dogs) {
		this.dogs = dogs;
		this.model = model;
		this.households = households;
		this.journal = journal;
	}

	/**
	 * Days of a dog.
	 * @param dog the dog
	 * @param from the first day; days before the dog was taken on are left out
	 * @param until the last day, not after today
	 * @return the days, the first day first
	 */
	@Transactional(readOnly = true)
	public List<DogDay> of(Dog dog, LocalDate from, LocalDate until) {
		List<WalkEntry> walks = this.journal.walks(dog.id());
		List<MorningEntry> mornings = this.journal.mornings(dog.id());
		Map<LocalDate, List<WalkFacts>> walksOfDay = walks.stream()
			.map(WalkEntry::facts)
			.collect(Collectors.groupingBy(WalkFacts::date));
		Map<LocalDate, MorningLook> lookOfDay = mornings.stream()
			.map(MorningEntry::facts)
			.collect(Collectors.toMap(MorningFacts::date, MorningLook::of, (first, later) -> later));
		var history = new DogHistory(dog, this.model.rule()).events(this.households.plansOf(dog.id()),
				this.households.medicationsOf(dog.id()), walks, mornings);
		return SuggestedDays.of(this.dogs.until(LocalDate.MIN, dog.id(), this.model.now(), history), from, until)
			.stream()
			.map((suggestion) -> new DogDay(suggestion.date(), suggestion,
					walksOfDay.getOrDefault(suggestion.date(), List.of()), lookOfDay.get(suggestion.date())))
			.toList();
	}

}
