package measuredwalk.clinic.pages;

import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;

import measuredwalk.clinic.DogMark;
import measuredwalk.household.Dog;
import measuredwalk.tolerance.Suggestion;

/**
 * The head of a dog's page; public for the templates only.
 *
 * @param id its number
 * @param name what it is called
 * @param about weight, age and medicines in words
 * @param mark changes when plan or medicines do
 * @param dose today's suggestion
 * @param why its reasons
 * @param tolerance the belief about its tolerance
 */
public record DogHead(UUID id, String name, String about, String mark, String dose, String why, String tolerance) {

	static DogHead of(Dog dog, Suggestion suggestion) {
		String why = suggestion.reasons()
			.stream()
			.map(Wording::words)
			.collect(Collectors.joining("; ", "Because: ", "."));
		return new DogHead(dog.id(), dog.name(), about(dog), DogMark.of(dog),
				"Today: " + Wording.dose(suggestion.walks(), suggestion.minutes()), why, tolerance(suggestion));
	}

	private static String about(Dog dog) {
		List<String> parts = new ArrayList<>();
		if (dog.weightKg() != null) {
			parts.add(Wording.figure(dog.weightKg()) + " kg");
		}
		if (dog.ageYears() != null) {
			parts.add(Wording.figure(dog.ageYears()) + " years when taken on");
		}
		if (!dog.medications().isEmpty()) {
			parts.add("on " + String.join(", ", dog.medications()));
		}
		return String.join(", ", parts);
	}

	private static String tolerance(Suggestion suggestion) {
		return "Tolerance today about " + Wording.figure(Math.rint(suggestion.toleranceMedian()))
				+ " min for one walk (80 in 100 between " + Wording.figure(Math.rint(suggestion.toleranceLow()))
				+ " and " + Wording.figure(Math.rint(suggestion.toleranceHigh()))
				+ "); chance of trouble at this length " + Math.round(100 * suggestion.chanceOfTrouble())
				+ " in 100. Estimates from what was told, no measurement.";
	}

}
