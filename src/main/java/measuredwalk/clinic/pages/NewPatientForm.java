package measuredwalk.clinic.pages;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Objects;

import measuredwalk.household.NewDog;
import org.jspecify.annotations.Nullable;
import org.springframework.format.annotation.DateTimeFormat;

/**
 * The fields of a new patient; public for the templates only.
 *
 * @param name what the dog is called
 * @param weightKg weight in kilograms
 * @param ageYears age in years
 * @param planMinutes minutes of each walk
 * @param walksPerDay walks a day
 * @param minMinutes the least minutes to suggest
 * @param maxMinutes the most minutes to suggest
 * @param medications kinds of medicine
 * @param surgeryDate the day of its last surgery
 * @param timeZone the zone that its days are counted in
 * @param growing true while it still grows
 */
public record NewPatientForm(@Nullable String name, @Nullable Double weightKg, @Nullable Double ageYears,
		@Nullable Double planMinutes, @Nullable Integer walksPerDay, @Nullable Double minMinutes,
		@Nullable Double maxMinutes, @Nullable List<String> medications,
		@DateTimeFormat(iso = DateTimeFormat.ISO.DATE) @Nullable LocalDate surgeryDate, @Nullable String timeZone,
		@Nullable Boolean growing) {

	public NewPatientForm {
		medications = (medications != null) ? List.copyOf(medications) : List.of();
	}

	static NewPatientForm empty(String timeZone) {
		return new NewPatientForm(null, null, null, null, 2, null, null, List.of(), null, timeZone, false);
	}

	NewDog newDog() {
		return new NewDog(Objects.requireNonNullElse(this.name, ""), this.weightKg, this.ageYears,
				!Boolean.TRUE.equals(this.growing), this.surgeryDate, zone(),
				Objects.requireNonNullElse(this.planMinutes, 0.0), this.walksPerDay, this.minMinutes, this.maxMinutes,
				List.of(), Objects.requireNonNull(this.medications));
	}

	private ZoneId zone() {
		try {
			return ZoneId.of(Objects.requireNonNullElse(this.timeZone, ""));
		}
		catch (DateTimeException ex) {
			throw new IllegalArgumentException("The time zone is not known; write a name such as Europe/London.", ex);
		}
	}

}
