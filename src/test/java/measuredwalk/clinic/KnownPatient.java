package measuredwalk.clinic;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Set;
import java.util.UUID;

import measuredwalk.household.Dog;
import measuredwalk.household.Households;
import measuredwalk.household.NewDog;
import measuredwalk.journal.MorningFacts;
import measuredwalk.journal.Note;
import measuredwalk.journal.NoteTopic;
import measuredwalk.journal.Notes;
import measuredwalk.journal.QuietJournal;
import measuredwalk.journal.Said;
import measuredwalk.journal.Teller;
import measuredwalk.journal.WalkFacts;
import measuredwalk.signs.LoadKind;
import measuredwalk.signs.Overall;
import measuredwalk.signs.Severity;
import measuredwalk.signs.Sign;
import measuredwalk.signs.SignKind;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** An invented dog that the clinic has known for some weeks. */
@Component
public class KnownPatient {

	private static final ZoneId LONDON = ZoneId.of("Europe/London");

	private static final Sign SLOWING = new Sign(SignKind.SLOWING, true, Severity.MILD, null, null, null, 12.0);

	private final Households households;

	private final QuietJournal journal;

	private final Notes notes;

	private final JdbcClient database;

	private final Clock clock;

	KnownPatient(Households households, QuietJournal journal, Notes notes, JdbcClient database, Clock clock) {
		this.households = households;
		this.journal = journal;
		this.notes = notes;
		this.database = database;
		this.clock = clock;
	}

	public LocalDate today() {
		return this.clock.instant().atZone(LONDON).toLocalDate();
	}

	/**
	 * Two walks and a morning a day; signs on every fifth day, none told on every
	 * seventh.
	 */
	public Dog knownFor(int days) {
		Dog dog = this.households
			.enrol(new NewDog("Sorrel", 30.0, 10.0, true, null, LONDON, 16, 2, 6.0, 40.0, List.of(), List.of("nsaid")),
					"test")
			.dog();
		LocalDate first = today().minusDays(days);
		this.database.sql("update dog set enrolled_on = ?, enrolled_at = ? where id = ?")
			.params(first, first.atStartOfDay().atOffset(ZoneOffset.UTC), dog.id())
			.update();
		this.database.sql("update plan set from_date = ? where dog_id = ?").params(first, dog.id()).update();
		this.database.sql("update medication set started_on = ? where dog_id = ?").params(first, dog.id()).update();
		for (int day = 0; day < days; day++) {
			if (day % 7 != 6) {
				tell(dog, first.plusDays(day), day % 5 == 4);
			}
		}
		this.notes.keep(dog.id(), new Note(NoteTopic.WEIGHT, today(), said("she was 29.6 on the scales", today(), 10)));
		return this.households.dog(dog.id()).orElseThrow();
	}

	private void tell(Dog dog, LocalDate date, boolean withSigns) {
		Teller wren = new Teller(
				UUID.nameUUIDFromBytes(dog.id().toString().getBytes(java.nio.charset.StandardCharsets.UTF_8)), "Wren");
		this.journal
			.write(dog.id(), new MorningFacts(date, withSigns ? 35.0 : null, withSigns ? Overall.WORSE : Overall.USUAL,
					withSigns ? List.of(new Sign(SignKind.STIFFNESS, true, Severity.MODERATE, null, null, null, null))
							: List.of(),
					List.of()), wren,
					said(withSigns ? "stiff for half an hour, could hardly get off her bed" : "fine", date, 8));
		walk(dog, date, 8, withSigns, wren);
		walk(dog, date, 17, false, wren);
	}

	private void walk(Dog dog, LocalDate date, int hour, boolean withSigns, Teller wren) {
		this.journal.write(dog.id(),
				new WalkFacts(date, LocalTime.of(hour, 30), 16.0, 16.0, 16.0, null, false, null,
						withSigns ? List.of(SLOWING) : List.of(), List.of(),
						withSigns ? Set.of(LoadKind.HILLS, LoadKind.PLAY) : Set.of()),
				wren, said(withSigns ? "16 min & slowed <a lot> after 12" : "16 min, good", date, hour + 1));
	}

	private static Said said(String text, LocalDate date, int hour) {
		Instant at = date.atTime(hour, 0).atZone(LONDON).toInstant();
		return new Said(text, at, "Wren");
	}

}
