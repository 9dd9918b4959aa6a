package measuredwalk.household;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;

import org.jspecify.annotations.Nullable;

/**
 * A dog to be taken on, with a household of its own. Only the name, the zone and the
 * plan's minutes are needed.
 *
 * @param name what it is called, 1 to 80 characters
 * @param weightKg weight in kilograms, above 0 and at most 120, or null
 * @param ageYears age in years, 0 to 30, or null
 * @param fullyGrown false while it still grows
 * @param surgeryDate the day of its last surgery, or null
 * @param timeZone the zone that its days are counted in
 * @param planMinutes minutes of each walk
 * @param walksPerDay walks a day, or null for 2
 * @param minMinutes the least minutes to suggest, or null for 5 or the plan, whichever is
 * less
 * @param maxMinutes the most minutes to suggest, or null for twice the plan
 * @param walkTimes usual times of its walks
 * @param medications kinds of medicine that it gets
 */
public record NewDog(String name, @Nullable Double weightKg, @Nullable Double ageYears, boolean fullyGrown,
		@Nullable LocalDate surgeryDate, ZoneId timeZone, double planMinutes, @Nullable Integer walksPerDay,
		@Nullable Double minMinutes, @Nullable Double maxMinutes, List<LocalTime> walkTimes, List<String> medications) {

	private static final int LONGEST_NAME = 80;

	private static final double HEAVIEST_KG = 120;

	private static final double OLDEST_YEARS = 30;

	/** Several short walks rather than one long: clinical rules, common practice. */
	private static final int USUAL_WALKS = 2;

	private static final double USUAL_FLOOR_MINUTES = 5;

	public NewDog {
		Refused.unless(!name.isBlank() && name.length() <= LONGEST_NAME,
				"name must have 1 to " + LONGEST_NAME + " characters.");
		Refused.unless(weightKg == null || (weightKg > 0 && weightKg <= HEAVIEST_KG),
				"weightKg must be above 0 and at most 120.");
		Refused.unless(ageYears == null || (ageYears >= 0 && ageYears <= OLDEST_YEARS), "ageYears must be 0 to 30.");
		name = name.strip();
		walkTimes = List.copyOf(walkTimes);
		medications = List.copyOf(medications);
	}

	Plan plan(LocalDate from) {
		double least = (this.minMinutes != null) ? this.minMinutes : Math.min(USUAL_FLOOR_MINUTES, this.planMinutes);
		double most = (this.maxMinutes != null) ? this.maxMinutes : Math.min(2 * this.planMinutes, 240);
		int walks = (this.walksPerDay != null) ? this.walksPerDay : USUAL_WALKS;
		return new Plan(from, this.planMinutes, walks, least, most);
	}

}
