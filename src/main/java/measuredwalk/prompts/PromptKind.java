package measuredwalk.prompts;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.util.Locale;

import measuredwalk.household.Dog;
import measuredwalk.household.Household;

/**
 * What comes unasked-for, when, and until when that is of use. Times of the day are
 * turned into instants by {@link ZonedDateTime#of}: an hour that a clock change leaves
 * out comes as much later as the clock jumps, and of an hour that comes twice the first
 * one counts.
 */
enum PromptKind {

	/** The check-in on the morning after. */
	MORNING(Duration.ofHours(4)) {

		@Override
		Instant due(Dog dog, Occasion occasion) {
			return at(dog.household(), occasion.date(), dog.household().morningAt());
		}

	},

	/** The check-in after a usual walk of which nothing was told. */
	AFTER_WALK(Duration.ofHours(2)) {

		@Override
		Instant due(Dog dog, Occasion occasion) {
			long walkAndRest = Math.round(dog.plan().planMinutes()) + REST_AFTER_WALK.toMinutes();
			Duration after = Duration.ofMinutes(Math.max(AFTER_WALK_HOUR.toMinutes(), walkAndRest));
			return at(dog.household(), occasion.date(), occasion.walkHour()).plus(after);
		}

	},

	/** The weekly question, after the morning check-in. */
	WEEKLY(Duration.ofHours(6)) {

		@Override
		Instant due(Dog dog, Occasion occasion) {
			return at(dog.household(), occasion.date(), dog.household().morningAt()).plus(AFTER_MORNING);
		}

	},

	/** The picture of the fortnight, in the calm of the evening. */
	FORTNIGHT(Duration.ofHours(2)) {

		@Override
		Instant due(Dog dog, Occasion occasion) {
			LocalTime quietFrom = dog.household().hours().quietFrom();
			boolean calm = !dog.household().hours().quietAt(CALM_HOUR);
			int minute = Math.floorMod(dog.household().id().hashCode(), MINUTES_OF_PICTURES);
			return at(dog.household(), occasion.date(), calm ? CALM_HOUR : quietFrom.minus(BEFORE_QUIET))
				.plus(Duration.ofMinutes(minute));
		}

	};

	/** Walks and supper are over: common practice, no source. */
	private static final LocalTime CALM_HOUR = LocalTime.of(19, 0);

	/**
	 * Each takes a tenth of a second to work out and draw, so that households of a zone
	 * have theirs within this time, one after the other.
	 */
	private static final int MINUTES_OF_PICTURES = 45;

	/** For a household whose quiet begins earlier. */
	private static final Duration BEFORE_QUIET = Duration.ofHours(1);

	/** Most walks of an old dog are over by then: common practice, no source. */
	private static final Duration AFTER_WALK_HOUR = Duration.ofMinutes(30);

	/** After a longer planned walk, time to get home: common practice, no source. */
	private static final Duration REST_AFTER_WALK = Duration.ofMinutes(10);

	private static final Duration AFTER_MORNING = Duration.ofHours(1);

	private final Duration ofUse;

	PromptKind(Duration ofUse) {
		this.ofUse = ofUse;
	}

	abstract Instant due(Dog dog, Occasion occasion);

	boolean tooLate(Dog dog, Occasion occasion, Instant now) {
		return now.isAfter(due(dog, occasion).plus(this.ofUse));
	}

	String taskName() {
		return name().toLowerCase(Locale.ROOT).replace('_', '-') + "-check-in";
	}

	static Instant at(Household household, LocalDate date, LocalTime time) {
		return ZonedDateTime.of(date, time, household.timeZone()).toInstant();
	}

}
