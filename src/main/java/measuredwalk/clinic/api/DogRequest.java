package measuredwalk.clinic.api;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Objects;
import java.util.UUID;

import measuredwalk.household.DogChange;
import measuredwalk.household.NewDog;
import org.jspecify.annotations.Nullable;

/** A dog to be taken on, or changes to one, as the API takes them. */
record DogRequest(@Nullable String name, @Nullable Double weightKg, @Nullable Double ageYears,
		@Nullable Boolean fullyGrown, @Nullable LocalDate surgeryDate, @Nullable String timeZone,
		@Nullable Double planMinutes, @Nullable Integer walksPerDay, @Nullable Double minMinutes,
		@Nullable Double maxMinutes, @Nullable List<String> walkTimes, @Nullable List<String> medications,
		@Nullable UUID householdId) {

	/** A dog that joins a household need name no zone: it has the household's. */
	NewDog newDog() {
		return new NewDog(required("name", this.name), this.weightKg, this.ageYears,
				Objects.requireNonNullElse(this.fullyGrown, true), this.surgeryDate,
				(this.householdId != null && this.timeZone == null) ? ZoneOffset.UTC
						: zone(required("timeZone", this.timeZone)),
				required("planMinutes", this.planMinutes), this.walksPerDay, this.minMinutes, this.maxMinutes, times(),
				Objects.requireNonNullElse(this.medications, List.of()));
	}

	DogChange change() {
		return new DogChange(this.planMinutes, this.walksPerDay, this.minMinutes, this.maxMinutes, this.medications);
	}

	private static <T> T required(String field, @Nullable T given) {
		if (given == null) {
			throw new BadRequest("'" + field + "' is missing; send it.");
		}
		return given;
	}

	private static ZoneId zone(String name) {
		try {
			return ZoneId.of(name);
		}
		catch (DateTimeException ex) {
			throw new BadRequest("timeZone '" + name + "' is not known; send a name such as Europe/London.");
		}
	}

	private List<LocalTime> times() {
		return Objects.requireNonNullElse(this.walkTimes, List.<String>of()).stream().map(DogRequest::time).toList();
	}

	private static LocalTime time(String text) {
		try {
			return LocalTime.parse(text);
		}
		catch (DateTimeException ex) {
			throw new BadRequest("walkTimes holds '" + text + "'; send times such as 17:30.");
		}
	}

}
