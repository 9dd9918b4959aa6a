package measuredwalk.clinic.pages;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;

import measuredwalk.clinic.DogMark;
import measuredwalk.household.Dog;
import measuredwalk.signs.LoadKind;
import measuredwalk.tolerance.Advice;
import measuredwalk.tolerance.Reason;
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

	/**
	 * A dog's head.
	 * @param dog the dog
	 * @param suggestion today's suggestion
	 * @param loads what made the last days' walks harder
	 */
	static DogHead of(Dog dog, Suggestion suggestion, Set<LoadKind> loads) {
		String why = suggestion.reasons()
			.stream()
			.map((reason) -> (reason == Reason.HARDER_WALK_COUNTS_MORE)
					? Wording.words(reason) + " (" + Wording.loads(loads) + ")" : Wording.words(reason))
			.collect(Collectors.joining("; ", "Because: ", "."));
		return new DogHead(dog.id(), dog.name(), about(dog), DogMark.of(dog), dose(suggestion), why,
				tolerance(suggestion));
	}

	private static String dose(Suggestion suggestion) {
		String dose = Wording.dose(suggestion.walks(), suggestion.minutes());
		if (suggestion.advice() == Advice.EMERGENCY) {
			return "Today: no walk before the dog is seen, and then at most " + dose;
		}
		return (suggestion.walks() == 0) ? Wording.sentence(dose) : "Today: " + dose;
	}

	/** Weight, age and medicines. */
	static String about(Dog dog) {
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
