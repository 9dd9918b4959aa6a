package measuredwalk.clinic.api;

import java.time.Instant;
import java.time.LocalTime;
import java.util.List;
import java.util.UUID;

import measuredwalk.household.Dog;
import org.jspecify.annotations.Nullable;

/** A dog as the API shows it. */
record DogView(UUID id, String name, @Nullable Double weightKg, @Nullable Double ageYears, String timeZone,
		double planMinutes, int walksPerDay, double minMinutes, double maxMinutes, List<String> walkTimes,
		List<String> medications, Instant enrolledAt, UUID householdId, String language, String units) {

	static DogView of(Dog dog) {
		return new DogView(dog.id(), dog.name(), dog.weightKg(), dog.ageYears(), dog.household().timeZone().getId(),
				dog.plan().planMinutes(), dog.plan().walksPerDay(), dog.plan().minMinutes(), dog.plan().maxMinutes(),
				dog.walkTimes().stream().map(LocalTime::toString).toList(), dog.medications(), dog.enrolledAt(),
				dog.household().id(), dog.household().speech().tag(), dog.household().speech().units().code());
	}

}
