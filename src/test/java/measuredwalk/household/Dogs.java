package measuredwalk.household;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.UUID;

/** Invented dogs for tests. */
public final class Dogs {

	private Dogs() {
	}

	public static Dog in(String zone, LocalTime morningAt, double planMinutes) {
		return with(zone, Hours.usual().withMorningAt(morningAt), planMinutes);
	}

	public static Dog quiet(String zone, LocalTime from, LocalTime until) {
		return with(zone, Hours.usual().withQuiet(from, until), 20);
	}

	private static Dog with(String zone, Hours hours, double planMinutes) {
		Household household = new Household(UUID.randomUUID(), ZoneId.of(zone), hours);
		LocalDate enrolledOn = LocalDate.of(2026, 1, 5);
		return new Dog(UUID.randomUUID(), household, "Tarn", null, null, true, null,
				new Plan(enrolledOn, planMinutes, 2, 5, 60), List.of(), false, List.of(), enrolledOn, Instant.EPOCH, 0);
	}

}
