package measuredwalk.prompts;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;

import measuredwalk.household.Dog;
import measuredwalk.household.Dogs;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * Days and jumps of the clocks are those of the tz database: Europe/London springs from
 * 01:00 to 02:00 on 2026-03-29 and falls from 02:00 to 01:00 on 2026-10-25;
 * America/New_York springs from 02:00 to 03:00 on 2026-03-08 and falls from 02:00 to
 * 01:00 on 2026-11-01; Australia/Lord_Howe falls by half an hour from 02:00 on
 * 2026-04-05.
 */
class PromptKindTests {

	@ParameterizedTest
	@CsvSource({ "Europe/London,2026-03-28,07:30,2026-03-28T07:30:00Z",
			"Europe/London,2026-03-29,07:30,2026-03-29T06:30:00Z",
			"Europe/London,2026-10-24,07:30,2026-10-24T06:30:00Z",
			"Europe/London,2026-10-25,07:30,2026-10-25T07:30:00Z",
			"America/New_York,2026-03-07,07:30,2026-03-07T12:30:00Z",
			"America/New_York,2026-03-08,07:30,2026-03-08T11:30:00Z",
			"America/New_York,2026-11-01,07:30,2026-11-01T12:30:00Z",
			"Australia/Lord_Howe,2026-04-05,07:30,2026-04-04T21:00:00Z" })
	void theMorningComesAtTheSameHourOfTheWallClockOnBothSidesOfAClockChange(String zone, LocalDate date,
			LocalTime morning, Instant due) {
		Dog dog = Dogs.in(zone, morning, 20);
		assertThat(PromptKind.MORNING.due(dog, Occasion.of(dog.id(), date))).isEqualTo(due);
	}

	@ParameterizedTest
	@CsvSource({ "Europe/London,2026-03-29,01:30,2026-03-29T01:30:00Z",
			"America/New_York,2026-03-08,02:30,2026-03-08T07:30:00Z" })
	void anHourThatTheClocksLeaveOutComesAsMuchLater(String zone, LocalDate date, LocalTime morning, Instant due) {
		Dog dog = Dogs.in(zone, morning, 20);
		assertThat(PromptKind.MORNING.due(dog, Occasion.of(dog.id(), date))).isEqualTo(due);
	}

	@ParameterizedTest
	@CsvSource({ "Europe/London,2026-10-25,01:30,2026-10-25T00:30:00Z",
			"America/New_York,2026-11-01,01:30,2026-11-01T05:30:00Z" })
	void ofAnHourThatComesTwiceTheFirstCounts(String zone, LocalDate date, LocalTime morning, Instant due) {
		Dog dog = Dogs.in(zone, morning, 20);
		assertThat(PromptKind.MORNING.due(dog, Occasion.of(dog.id(), date))).isEqualTo(due);
	}

	@ParameterizedTest
	@CsvSource({ "10,2026-06-10T17:00:00Z", "20,2026-06-10T17:00:00Z", "45,2026-06-10T17:25:00Z" })
	void aWalkIsAskedAboutHalfAnHourAfterItsHourOrWhenALongOneIsOver(double planMinutes, Instant due) {
		Dog dog = Dogs.in("Europe/London", LocalTime.of(7, 30), planMinutes);
		Occasion walk = new Occasion(dog.id(), LocalDate.of(2026, 6, 10), LocalTime.of(17, 30), 0);
		assertThat(PromptKind.AFTER_WALK.due(dog, walk)).isEqualTo(due);
	}

	@Test
	void aWalkIsNotAskedAboutAnyMoreTwoHoursLater() {
		Dog dog = Dogs.in("Europe/London", LocalTime.of(7, 30), 20);
		Occasion walk = new Occasion(dog.id(), LocalDate.of(2026, 6, 10), LocalTime.of(17, 30), 0);
		Instant latest = PromptKind.AFTER_WALK.due(dog, walk).plus(Duration.ofHours(2));
		assertThat(PromptKind.AFTER_WALK.tooLate(dog, walk, latest)).isFalse();
		assertThat(PromptKind.AFTER_WALK.tooLate(dog, walk, latest.plusSeconds(1))).isTrue();
	}

	@ParameterizedTest
	@CsvSource({ "21:30,07:00,2026-06-14T18:00:00Z", "18:30,07:00,2026-06-14T16:30:00Z",
			"00:30,07:00,2026-06-14T18:00:00Z" })
	void thePictureComesInTheCalmOfTheEveningButBeforeTheQuietHours(LocalTime quietFrom, LocalTime quietUntil,
			Instant due) {
		Dog dog = Dogs.quiet("Europe/London", quietFrom, quietUntil);
		assertThat(PromptKind.FORTNIGHT.due(dog, Occasion.of(dog.id(), LocalDate.of(2026, 6, 14)))).isBetween(due,
				due.plus(Duration.ofMinutes(44)));
	}

	@Test
	void theNameOfAnOccasionSaysAllOfIt() {
		Occasion walk = new Occasion(Dogs.in("UTC", LocalTime.NOON, 20).id(), LocalDate.of(2026, 6, 10),
				LocalTime.of(17, 30), 2);
		assertThat(Occasion.named(walk.name())).isEqualTo(walk);
		Occasion morning = Occasion.of(walk.dogId(), walk.date());
		assertThat(Occasion.named(morning.name())).isEqualTo(morning);
	}

}
