package measuredwalk.journal;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Set;
import java.util.UUID;

import measuredwalk.household.Households;
import measuredwalk.household.NewDog;
import measuredwalk.signs.LoadKind;
import measuredwalk.signs.Overall;
import measuredwalk.signs.Sign;
import measuredwalk.signs.SignKind;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.test.annotation.DirtiesContext;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

/** Corrections and undo keep history, the same on each database. */
@SpringBootTest(properties = "measuredwalk.rehearsal=false")
@DirtiesContext
abstract class JournalContract {

	private static final LocalDate DAY = LocalDate.of(2026, 3, 14);

	private static final Instant NOON = Instant.parse("2026-03-14T12:00:00Z");

	private static final Teller ROWAN = new Teller(UUID.randomUUID(), "Rowan");

	@Autowired
	private Journal journal;

	@Autowired
	private Households households;

	private UUID dog = UUID.randomUUID();

	@BeforeEach
	void oneDog() {
		NewDog newDog = new NewDog("Teasel", null, null, true, null, ZoneId.of("Europe/London"), 20, null, null, null,
				List.of(), List.of());
		this.dog = this.households.enrol(newDog, "a test").dog().id();
	}

	private static WalkFacts walk(double minutes) {
		return new WalkFacts(DAY, null, minutes, minutes, minutes, null, false, null,
				List.of(Sign.seen(SignKind.LAMENESS), Sign.denied(SignKind.STIFFNESS)), List.of("walks[0].minutes"),
				Set.of(LoadKind.HILLS, LoadKind.WARM_DAY));
	}

	private static Said said(String text, int minutesLater) {
		return new Said(text, NOON.plusSeconds(minutesLater * 60L), "Rowan");
	}

	@Test
	void aWalkComesBackAsItWasWritten() {
		WalkEntry written = this.journal.write(this.dog, walk(25), ROWAN, said("25 \u00e9\uD83D\uDC36 'quoted'", 0));
		assertThat(this.journal.walks(this.dog)).containsExactly(written);
	}

	@Test
	void aCorrectionCountsInThePlaceOfWhatWasThereAndKeepsIt() {
		WalkEntry first = this.journal.write(this.dog, walk(50), ROWAN, said("50", 0));
		this.journal.replace(first.id(), first.facts().withMinutes(15), said("15 not 50", 1));
		assertThat(this.journal.walks(this.dog)).singleElement()
			.satisfies((walk) -> assertThat(walk.facts().minutes()).isEqualTo(15.0))
			.satisfies((walk) -> assertThat(walk.said()).extracting(Said::text).containsExactly("50", "15 not 50"));
		assertThat(this.journal.walkHistory(this.dog)).extracting(WalkEntry::standing)
			.containsExactly(Standing.REPLACED, Standing.COUNTS);
	}

	@Test
	void undoTakesBackTheWholeLastEntryOfThatCarerOnly() {
		WalkEntry walk = this.journal.write(this.dog, walk(20), ROWAN, said("20", 0));
		Teller other = new Teller(UUID.randomUUID(), "Sorrel");
		this.journal.write(this.dog, walk(30), other, said("30", 5));
		assertThat(this.journal.undoLast(ROWAN, NOON.plusSeconds(600))).get()
			.extracting((entry) -> entry.asWalk().orElseThrow().id())
			.isEqualTo(walk.id());
		assertThat(this.journal.walks(this.dog)).extracting((each) -> each.facts().minutes()).containsExactly(30.0);
		assertThat(this.journal.walkHistory(this.dog)).hasSize(2);
	}

	@Test
	void undoTakesTheMorningWhenThatWasToldLast() {
		this.journal.write(this.dog, walk(20), ROWAN, said("20", 0));
		MorningFacts morning = new MorningFacts(DAY.plusDays(1), 10.0, Overall.WORSE, List.of(), List.of());
		this.journal.write(this.dog, morning, ROWAN, said("stiff", 60));
		assertThat(this.journal.undoLast(ROWAN, NOON.plusSeconds(7200))).get()
			.matches((entry) -> entry.asMorning().isPresent());
		assertThat(this.journal.mornings(this.dog)).isEmpty();
		assertThat(this.journal.walks(this.dog)).hasSize(1);
	}

	@Test
	void whatWasTakenBackCannotBeReplaced() {
		WalkEntry walk = this.journal.write(this.dog, walk(20), ROWAN, said("20", 0));
		this.journal.undoLast(ROWAN, NOON);
		assertThatThrownBy(() -> this.journal.replace(walk.id(), walk(10), said("10", 1)))
			.isInstanceOf(java.util.NoSuchElementException.class);
	}

	@Test
	void erasingTheDogErasesItsJournal() {
		this.journal.write(this.dog, walk(20), ROWAN, said("20", 0));
		this.households.erase(this.dog);
		assertThat(this.journal.walkHistory(this.dog)).isEmpty();
	}

}
