package measuredwalk.clinic.caseload;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.UUID;

import measuredwalk.household.Dog;
import measuredwalk.household.Hours;
import measuredwalk.household.Household;
import measuredwalk.household.Plan;
import measuredwalk.journal.Said;
import measuredwalk.journal.Standing;
import measuredwalk.journal.Teller;
import measuredwalk.journal.WalkEntry;
import measuredwalk.journal.WalkFacts;
import measuredwalk.signs.Severity;
import measuredwalk.signs.Sign;
import measuredwalk.signs.SignKind;
import measuredwalk.tolerance.Advice;
import measuredwalk.tolerance.Reason;
import measuredwalk.tolerance.Suggestion;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

import static org.assertj.core.api.Assertions.assertThat;

class StandingJudgeTests {

	private static final LocalDate TODAY = LocalDate.of(2026, 3, 14);

	private static final Instant TOLD = Instant.parse("2026-03-14T09:00:00Z");

	private final Dog dog = new Dog(UUID.randomUUID(),
			new Household(UUID.randomUUID(), ZoneId.of("Europe/London"), Hours.usual()), "Sorrel", null, null, true,
			null, new Plan(TODAY.minusDays(10), 20, 2, 5, 40), List.of(), false, List.of(), TODAY.minusDays(10),
			Instant.parse("2026-03-04T09:00:00Z"), 0);

	private static Suggestion suggestion(Advice advice) {
		return new Suggestion(TODAY, 2, 18, 16, 20, .12, 25, 18, 35, advice, List.of(Reason.LEARNED_FROM_WALKS));
	}

	private WalkEntry walk(LocalDate date, @Nullable Severity severity) {
		List<Sign> signs = (severity != null)
				? List.of(new Sign(SignKind.LAMENESS, true, severity, null, null, null, null)) : List.of();
		WalkFacts facts = new WalkFacts(date, null, 20.0, 20.0, 20.0, null, false, null, signs, List.of());
		return new WalkEntry(UUID.randomUUID(), 1, Standing.COUNTS, this.dog.id(), facts,
				List.of(new Said("20 minutes", TOLD, "Wren")), new Teller(UUID.randomUUID(), "Wren"), TOLD, TOLD, null,
				null);
	}

	private DogStanding judged(Advice advice, WalkEntry... walks) {
		return new StandingJudge(this.dog, List.of(walks), List.of()).judge(suggestion(advice));
	}

	@Test
	void aDogWithoutSignsIsSteady() {
		assertThat(judged(Advice.USUAL, walk(TODAY, null)).concern()).isEqualTo(Concern.STEADY);
	}

	@Test
	void aSignOfTheLastDaysIsKeptAnEyeOn() {
		DogStanding standing = judged(Advice.USUAL, walk(TODAY.minusDays(2), Severity.MILD));
		assertThat(standing.concern()).isEqualTo(Concern.WATCH);
		assertThat(standing.reason()).contains("lameness");
	}

	@Test
	void anOldSignIsNot() {
		assertThat(judged(Advice.USUAL, walk(TODAY.minusDays(3), Severity.MILD)).concern()).isEqualTo(Concern.STEADY);
	}

	@Test
	void severeLamenessIsLookedAtFirst() {
		assertThat(judged(Advice.EASE_OFF, walk(TODAY, Severity.SEVERE)).concern()).isEqualTo(Concern.LOOK_FIRST);
	}

	@Test
	void restAfterABadMorningIsLookedAtFirst() {
		assertThat(judged(Advice.REST).concern()).isEqualTo(Concern.LOOK_FIRST);
	}

	@Test
	void emergencySignsShowNoWalkInTheList() {
		assertThat(judged(Advice.EMERGENCY).walks()).isZero();
		assertThat(judged(Advice.CALL_CLINIC).walks()).isEqualTo(2);
	}

	@Test
	void easingOffForWantOfNewsIsSilenceAndNoConcern() {
		assertThat(judged(Advice.EASE_OFF).concern()).isEqualTo(Concern.STEADY);
	}

	@Test
	void morningsAreExpectedFromTheDayAfterItWasTakenOn() {
		assertThat(judged(Advice.USUAL).morningsExpected()).isEqualTo(10);
	}

}
