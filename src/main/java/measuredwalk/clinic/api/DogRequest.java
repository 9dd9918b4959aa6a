package measuredwalk.clinic.api;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;

import measuredwalk.conversations.Tongue;
import measuredwalk.conversations.Tongues;
import measuredwalk.household.DogChange;
import measuredwalk.household.NewDog;
import measuredwalk.speech.Speech;
import measuredwalk.speech.Units;
import org.jspecify.annotations.Nullable;

/** A dog to be taken on, or changes to one, as the API takes them. */
record DogRequest(@Nullable String name, @Nullable Double weightKg, @Nullable Double ageYears,
		@Nullable Boolean fullyGrown, @Nullable LocalDate surgeryDate, @Nullable String timeZone,
		@Nullable Double planMinutes, @Nullable Integer walksPerDay, @Nullable Double minMinutes,
		@Nullable Double maxMinutes, @Nullable List<String> walkTimes, @Nullable List<String> medications,
		@Nullable UUID householdId, @Nullable String language, @Nullable String units) {

	/** A dog that joins a household need name no zone: it has the household's. */
	NewDog newDog() {
		return new NewDog(required("name", this.name), this.weightKg, this.ageYears,
				Objects.requireNonNullElse(this.fullyGrown, true), this.surgeryDate,
				(this.householdId != null && this.timeZone == null) ? ZoneOffset.UTC
						: zone(required("timeZone", this.timeZone)),
				required("planMinutes", this.planMinutes), this.walksPerDay, this.minMinutes, this.maxMinutes, times(),
				Objects.requireNonNullElse(this.medications, List.of()));
	}

	/**
	 * How its household shall be spoken to, if that is told.
	 * @throws BadRequest when there is no such language or unit
	 */
	Optional<Speech> speech(Tongues tongues, Speech before) {
		if (this.language == null && this.units == null) {
			return Optional.empty();
		}
		Speech speech = (this.language == null) ? before : inLanguage(tongues, this.language, before);
		return Optional.of((this.units == null) ? speech : speech.withUnits(Units.of(this.units)
			.orElseThrow(() -> new BadRequest("units must be km or miles, not '" + this.units + "'."))));
	}

	private static Speech inLanguage(Tongues tongues, String language, Speech before) {
		return tongues.meantBy(language)
			.map((tongue) -> before.inLanguage(tongue.tag(), tongue.units()))
			.orElseThrow(() -> new BadRequest("language '" + language + "' is not known; send one of "
					+ tongues.all().stream().map(Tongue::tag).toList() + "."));
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
