package measuredwalk.clinic.pages;

import java.time.ZoneId;
import java.util.Locale;
import java.util.UUID;

import measuredwalk.clinic.caseload.Concern;
import measuredwalk.clinic.caseload.DogStanding;
import measuredwalk.household.Dog;
import org.jspecify.annotations.Nullable;

/**
 * A dog in a list; public for the templates only.
 *
 * @param id its number
 * @param name what it is called
 * @param concern the concern, as a word for the style sheet
 * @param concernWords the concern in words
 * @param reason why
 * @param dose today's suggestion
 * @param heard when it was last heard of, in words
 */
public record DogLine(UUID id, String name, String concern, String concernWords, String reason, String dose,
		String heard) {

	static DogLine of(Dog dog, @Nullable DogStanding standing) {
		if (standing == null) {
			return new DogLine(dog.id(), dog.name(), "steady", Concern.STEADY.shown(), "just taken on", "", "");
		}
		return new DogLine(dog.id(), dog.name(), standing.concern().name().toLowerCase(Locale.ROOT).replace('_', '-'),
				standing.concern().shown(), standing.reason(), Wording.dose(standing.walks(), standing.minutes()),
				heard(standing, dog.household().timeZone()));
	}

	private static String heard(DogStanding standing, ZoneId zone) {
		return (standing.lastHeardAt() == null) ? "nothing told yet"
				: "last heard of " + Wording.moment(standing.lastHeardAt(), zone);
	}

}
