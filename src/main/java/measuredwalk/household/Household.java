package measuredwalk.household;

import java.time.LocalTime;
import java.time.ZoneId;
import java.util.UUID;

import measuredwalk.speech.Speech;

/**
 * The people who share the log of a dog or of several.
 *
 * @param id its number
 * @param timeZone the zone that its days are counted in
 * @param hours when its people want to be asked, in that zone
 * @param speech how they are spoken to
 */
public record Household(UUID id, ZoneId timeZone, Hours hours, Speech speech) {

	/**
	 * A household that is spoken to as usual.
	 * @param id its number
	 * @param timeZone the zone that its days are counted in
	 * @param hours when its people want to be asked
	 */
	public Household(UUID id, ZoneId timeZone, Hours hours) {
		this(id, timeZone, hours, Speech.usual());
	}

	/**
	 * When the morning check-in is asked.
	 * @return the time, in the household's zone
	 */
	public LocalTime morningAt() {
		return this.hours.morningAt();
	}

}
