package measuredwalk.care;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

import measuredwalk.conversations.CheckIns;
import measuredwalk.household.Dog;
import measuredwalk.journal.Journal;
import measuredwalk.journal.WalkEntry;
import org.springframework.stereotype.Component;

/**
 * When a dog usually walks: as its household said by {@code /hours}; otherwise as learned
 * from the journal; otherwise as the clinic was told.
 */
@Component
class WalkHours {

	/** Kept with a check-in: the usual walk hour that it was asked for. */
	static final String ASKED_FOR = "walk-hour";

	/** A walk whose beginning was told belongs to a usual hour as near as this. */
	private static final Duration NEAR = Duration.ofMinutes(90);

	/** A walk that is told this long before a usual hour may be the walk of that hour. */
	private static final Duration EARLY = Duration.ofMinutes(60);

	private final Journal journal;

	private final CheckIns checkIns;

	WalkHours(Journal journal, CheckIns checkIns) {
		this.journal = journal;
		this.checkIns = checkIns;
	}

	List<LocalTime> of(Dog dog) {
		if (dog.walkTimesTold()) {
			return dog.walkTimes();
		}
		List<LocalTime> learned = learned(dog);
		return learned.isEmpty() ? dog.walkTimes() : learned;
	}

	private List<LocalTime> learned(Dog dog) {
		List<WalkEntry> walks = this.journal.walks(dog.id());
		if (walks.isEmpty()) {
			return List.of();
		}
		LocalDate last = walks.get(walks.size() - 1).facts().date();
		LocalDate from = last.minusDays(WalkHabits.DAYS);
		Map<UUID, LocalTime> asked = askedFor(dog, from);
		return WalkHabits.learned(walks.stream()
			.filter((walk) -> walk.facts().date().isAfter(from))
			.flatMap((walk) -> beginning(walk, asked, dog.household().timeZone()).stream())
			.toList());
	}

	/**
	 * A walk that was asked for counts as begun at the hour it was asked for: the answer
	 * comes later than it would have come unasked, and would move the hour ever later.
	 */
	private Map<UUID, LocalTime> askedFor(Dog dog, LocalDate from) {
		Map<UUID, LocalTime> hours = new HashMap<>();
		this.checkIns.about(dog.id(), CheckIns.AFTER_WALK, from).forEach((checkIn) -> {
			String hour = checkIn.remembered().get(ASKED_FOR);
			if (hour != null && checkIn.entryId() != null) {
				hours.put(checkIn.entryId(), LocalTime.parse(hour));
			}
		});
		return hours;
	}

	/** When a walk began, as told or as when it was told less its minutes. */
	private static Optional<LocalDateTime> beginning(WalkEntry walk, Map<UUID, LocalTime> asked, ZoneId zone) {
		LocalDate date = walk.facts().date();
		LocalTime told = walk.facts().start();
		LocalTime start = (told != null) ? told : asked.get(walk.id());
		if (start != null) {
			return Optional.of(date.atTime(start));
		}
		Double minutes = walk.facts().minutes();
		long length = (minutes != null) ? Math.round(minutes) : 0;
		LocalDateTime begun = LocalDateTime.ofInstant(walk.reportedAt(), zone).minusMinutes(length);
		return Optional.of(begun).filter((time) -> time.toLocalDate().equals(date));
	}

	/** Whether a walk of the day was told that is the walk of a usual hour. */
	boolean toldOf(Dog dog, LocalDate date, LocalTime hour) {
		List<LocalTime> hours = of(dog);
		return this.journal.walks(dog.id())
			.stream()
			.filter((walk) -> walk.facts().date().equals(date))
			.anyMatch((walk) -> isOf(walk, hour, hours, dog.household().timeZone()));
	}

	private static boolean isOf(WalkEntry walk, LocalTime hour, List<LocalTime> hours, ZoneId zone) {
		LocalTime start = walk.facts().start();
		if (start != null) {
			return Duration.between(start, hour).abs().compareTo(NEAR) <= 0;
		}
		LocalTime told = LocalDateTime.ofInstant(walk.reportedAt(), zone).toLocalTime();
		Optional<LocalTime> latest = hours.stream()
			.filter((each) -> Duration.between(told, each).compareTo(EARLY) <= 0)
			.max(LocalTime::compareTo);
		return latest.filter(hour::equals).isPresent();
	}

}
