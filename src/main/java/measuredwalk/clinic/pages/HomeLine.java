package measuredwalk.clinic.pages;

import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;

import measuredwalk.household.Carer;
import measuredwalk.household.Dog;

/**
 * A household in a list; public for the templates only.
 *
 * @param dogId the dog
 * @param dogName what it is called
 * @param people who has joined, in words
 */
public record HomeLine(UUID dogId, String dogName, String people) {

	static HomeLine of(Dog dog, List<Carer> carers) {
		String people = carers.stream()
			.map((carer) -> carer.name() + (carer.silenced() ? " (wants no messages)" : ""))
			.collect(Collectors.joining(", "));
		return new HomeLine(dog.id(), dog.name(), people.isEmpty() ? "nobody has joined yet" : people);
	}

}
