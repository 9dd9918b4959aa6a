package measuredwalk.escalation.course;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.UUID;

import measuredwalk.clinic.RunningClinic;
import measuredwalk.clock.Rehearsal;
import measuredwalk.escalation.Alert;
import measuredwalk.escalation.AlertLevel;
import measuredwalk.escalation.Alerts;
import measuredwalk.household.Dog;
import measuredwalk.household.Households;
import measuredwalk.household.NewDog;
import measuredwalk.journal.Journal;
import measuredwalk.journal.MorningFacts;
import measuredwalk.journal.Said;
import measuredwalk.journal.Teller;
import measuredwalk.journal.WalkFacts;
import measuredwalk.signs.Overall;
import measuredwalk.signs.Severity;
import measuredwalk.signs.Sign;
import measuredwalk.signs.SignKind;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

import static org.assertj.core.api.Assertions.assertThat;

/** From what is told to the review, over days of the rehearsal clock. */
@RunningClinic
class CourseWatchTests {

	private static final ZoneId LONDON = ZoneId.of("Europe/London");

	@Autowired
	private Households households;

	@Autowired
	private Journal journal;

	@Autowired
	private Alerts alerts;

	@Autowired
	private Rehearsal rehearsal;

	private Dog dog;

	private Teller wren;

	@BeforeEach
	void enrol() {
		this.dog = this.households
			.enrol(new NewDog("Sorrel", 30.0, 10.0, true, null, LONDON, 20, 2, null, null, List.of(), List.of()),
					"test")
			.dog();
		this.wren = new Teller(UUID.randomUUID(), "Wren");
		this.rehearsal.moveTo(today().plusDays(1).atTime(9, 0).atZone(LONDON).toInstant());
	}

	/** A little more than a day, since the clock runs on by itself meanwhile. */
	private void nextDay() {
		this.rehearsal.moveTo(this.rehearsal.now().plus(Duration.ofHours(24)).plus(Duration.ofMinutes(5)));
	}

	private LocalDate today() {
		return this.rehearsal.now().atZone(LONDON).toLocalDate();
	}

	private Said said(String text) {
		Instant now = this.rehearsal.now();
		return new Said(text, now, "Wren");
	}

	private void limps(Severity severity) {
		WalkFacts facts = new WalkFacts(today(), null, 15.0, 15.0, 15.0, null, false, null,
				List.of(new Sign(SignKind.LAMENESS, true, severity, null, null, null, null)), List.of());
		this.journal.write(this.dog.id(), facts, this.wren, said("limped on " + today()));
	}

	private List<Alert> raised() {
		return this.alerts.of(this.dog.id());
	}

	@Test
	void lamenessOnTwoDaysRaisesOneReviewWithTheWordsOfBoth() {
		limps(Severity.MILD);
		assertThat(raised()).isEmpty();
		nextDay();
		limps(Severity.MILD);
		assertThat(raised()).singleElement().satisfies((alert) -> {
			assertThat(alert.level()).isEqualTo(AlertLevel.REVIEW);
			assertThat(alert.reason()).contains("beyond 24 hours");
			assertThat(alert.evidence()).hasSize(2);
		});
	}

	@Test
	void theSameSpellIsNotRaisedAgainOnceItIsClosedButAWorseOneIs() {
		limps(Severity.MILD);
		nextDay();
		limps(Severity.MILD);
		this.alerts.close(raised().get(0).id(), "fern", "seen");
		nextDay();
		limps(Severity.MILD);
		assertThat(raised()).hasSize(1);
		limps(Severity.MODERATE);
		assertThat(raised()).hasSize(2);
	}

	@Test
	void silenceAfterABadMorningIsFoundByTheDailySweep() {
		this.journal.write(this.dog.id(), new MorningFacts(today(), null, Overall.WORSE, List.of(), List.of()),
				this.wren, said("much worse this morning"));
		nextDay();
		nextDay();
		assertThat(raised()).isEmpty();
		nextDay();
		this.rehearsal.moveTo(this.rehearsal.now().plus(Duration.ofHours(4)));
		assertThat(raised()).singleElement()
			.extracting(Alert::reason)
			.isEqualTo("Two morning check-ins missed after a bad morning");
	}

}
