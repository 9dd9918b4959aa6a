package measuredwalk.amounts;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.UUID;

import measuredwalk.household.Dog;
import measuredwalk.household.Hours;
import measuredwalk.household.Household;
import measuredwalk.household.Plan;
import measuredwalk.journal.Journal;
import measuredwalk.journal.Said;
import measuredwalk.journal.Standing;
import measuredwalk.journal.Teller;
import measuredwalk.journal.WalkEntry;
import measuredwalk.journal.WalkFacts;
import measuredwalk.reading.RelativeAmount;
import measuredwalk.reading.WalkTold;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.when;

class WalkAmountTests {

	private static final Instant EVENING = Instant.parse("2026-03-14T18:30:00Z");

	private static final LocalDate DAY = LocalDate.of(2026, 3, 14);

	private final Journal journal = mock();

	private final WalkAmount amounts = new WalkAmount(this.journal);

	private final Dog dog = new Dog(UUID.randomUUID(),
			new Household(UUID.randomUUID(), ZoneId.of("Europe/London"), Hours.usual()), "Teasel", null, null, true,
			null, new Plan(DAY, 20, 2, 6, 40), List.of(), false, List.of(), DAY, EVENING, 0);

	private static WalkTold distance(double metres) {
		return new WalkTold(null, null, null, metres, null, null, null);
	}

	private void alreadyWalked(double minutes, Double metres) {
		WalkFacts facts = new WalkFacts(DAY.minusDays(1), null, minutes, minutes, minutes, metres, false, null,
				List.of(), List.of());
		WalkEntry entry = new WalkEntry(UUID.randomUUID(), 1, Standing.COUNTS, this.dog.id(), facts,
				List.of(new Said("words", EVENING, "Rowan")), new Teller(UUID.randomUUID(), "Rowan"), EVENING, EVENING,
				null, null);
		when(this.journal.walks(this.dog.id())).thenReturn(List.of(entry));
	}

	/**
	 * Light 2010 (AJVR 71:997): Labradors walk at 2.2 to 3.2 km/h, so a kilometre takes
	 * them 60 / 3.2 = 18.75 to 60 / 2.2 = 27.3 minutes.
	 */
	@Test
	void aDistanceWithoutMinutesIsTurnedIntoMinutesByThePublishedWalkingSpeeds() {
		WalkFacts facts = this.amounts.facts(this.dog, DAY, distance(1000));
		assertThat(facts.minutes()).isBetween(18.75, 27.3);
		assertThat(facts.minutesHigh() - facts.minutesLow()).isGreaterThanOrEqualTo(27.3 - 18.75 - 1);
		assertThat(facts.minutesEstimated()).isTrue();
	}

	@Test
	void theDogsOwnPaceIsUsedOnceItIsKnown() {
		alreadyWalked(20, 1200.0);
		assertThat(this.amounts.facts(this.dog, DAY, distance(600)).minutes()).isEqualTo(10);
	}

	/**
	 * Clinical rules, sanity of minutes and distance: a dog's walk is 0.3 to 9 km/h at
	 * the outside.
	 */
	@ParameterizedTest(name = "{0} m in {1} minutes: kept {2}")
	@CsvSource({ "1000, 20, true", "80, 20, false", "6000, 20, false", "2900, 20, true", "110, 20, true" })
	void aDistanceThatNoDogWalksIsDroppedAndTheMinutesKept(double metres, double minutes, boolean kept) {
		WalkFacts facts = this.amounts.facts(this.dog, DAY,
				new WalkTold(minutes, minutes, minutes, metres, null, null, null));
		assertThat(facts.minutes()).isEqualTo(minutes);
		assertThat(facts.distanceMetres() != null).isEqualTo(kept);
	}

	@Test
	void halfTheUsualIsHalfOfWhatThisDogWalks() {
		alreadyWalked(24, null);
		RelativeAmount half = new RelativeAmount(RelativeAmount.Base.USUAL, 0.5, null);
		WalkFacts facts = this.amounts.facts(this.dog, DAY, new WalkTold(null, null, null, null, null, null, half));
		assertThat(facts.minutes()).isEqualTo(12);
		assertThat(facts.minutesEstimated()).isTrue();
	}

	@Test
	void aWalkOfLongAgoIsNotMeasuredAgainstLaterOnes() {
		alreadyWalked(24, null);
		RelativeAmount half = new RelativeAmount(RelativeAmount.Base.PREVIOUS, 0.5, null);
		WalkTold told = new WalkTold(null, null, null, null, null, null, half);
		assertThat(this.amounts.facts(this.dog, DAY, told).minutes()).isEqualTo(12);
		assertThat(this.amounts.facts(this.dog, DAY.minusDays(9), told).minutes()).isEqualTo(10);
	}

	@Test
	void tenMinutesLongerThanUsualStartsFromThePlanWhenNothingIsKnown() {
		RelativeAmount longer = new RelativeAmount(RelativeAmount.Base.USUAL, null, 10.0);
		WalkFacts facts = this.amounts.facts(this.dog, DAY, new WalkTold(null, null, null, null, null, null, longer));
		assertThat(facts.minutes()).isEqualTo(30);
	}

}
