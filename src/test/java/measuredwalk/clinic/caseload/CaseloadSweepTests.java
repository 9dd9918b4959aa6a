package measuredwalk.clinic.caseload;

import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.UUID;

import measuredwalk.clinic.RunningClinic;
import measuredwalk.clock.Rehearsal;
import measuredwalk.household.Households;
import measuredwalk.household.NewDog;
import measuredwalk.journal.Journal;
import measuredwalk.journal.Said;
import measuredwalk.journal.Teller;
import measuredwalk.journal.WalkFacts;
import measuredwalk.suggestions.DosingRules;
import measuredwalk.tolerance.DosingSetting;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

import static org.awaitility.Awaitility.await;
import static org.assertj.core.api.Assertions.assertThat;

@RunningClinic
class CaseloadSweepTests {

	private static final ZoneId LONDON = ZoneId.of("Europe/London");

	@Autowired
	private Caseload caseload;

	@Autowired
	private Households households;

	@Autowired
	private Journal journal;

	@Autowired
	private Rehearsal rehearsal;

	@Autowired
	private DosingRules rules;

	private UUID enrol() {
		return this.households
			.enrol(new NewDog("Sorrel", 30.0, 10.0, true, null, LONDON, 20, 2, null, null, List.of(), List.of()),
					"test")
			.dog()
			.id();
	}

	private DogStanding standing(UUID dog) {
		return this.caseload.all().stream().filter((each) -> each.dogId().equals(dog)).findFirst().orElseThrow();
	}

	@Test
	void everyDogIsLookedAtWhenItsDayBegins() {
		UUID dog = enrol();
		this.rehearsal.moveTo(this.rehearsal.now().plus(Duration.ofDays(2)));
		LocalDate today = this.rehearsal.now().atZone(LONDON).toLocalDate();
		assertThat(standing(dog).date()).isEqualTo(today);
		assertThat(standing(dog).morningsExpected()).isEqualTo(2);
	}

	@Test
	void aDogIsLookedAtAsSoonAsSomethingIsTold() {
		UUID dog = enrol();
		LocalDate today = this.rehearsal.now().atZone(LONDON).toLocalDate();
		this.journal.write(dog, new WalkFacts(today, null, 20.0, 20.0, 20.0, null, false, null, List.of(), List.of()),
				new Teller(UUID.randomUUID(), "Wren"), new Said("20 minutes", this.rehearsal.now(), "Wren"));
		assertThat(standing(dog).lastHeardAt()).isNotNull();
	}

	@Test
	void aChangeOfTheDosingRuleLetsEveryDogBeLookedAtAfresh() {
		UUID dog = enrol();
		this.caseload.lookAt(dog);
		double before = standing(dog).minutes();
		this.rules.set(DosingSetting.TROUBLE_WHEN_NEW, 0.05, "fern");
		try {
			await().atMost(Duration.ofSeconds(30)).until(() -> standing(dog).minutes() < before);
		}
		finally {
			this.rules.backToDefault(DosingSetting.TROUBLE_WHEN_NEW);
		}
	}

}
