package measuredwalk.diary;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;

import measuredwalk.household.Dog;
import measuredwalk.journal.Journal;
import measuredwalk.journal.MorningFacts;
import measuredwalk.journal.Said;
import measuredwalk.journal.Teller;
import measuredwalk.journal.WalkFacts;
import measuredwalk.reading.Level;
import measuredwalk.reading.MessageReader;
import measuredwalk.reading.OwnerMessage;
import measuredwalk.reading.Question;
import measuredwalk.reading.Reading;
import measuredwalk.reading.WalkTold;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * Reads a dog's paper diary as messages are read. Nothing is stored before somebody has
 * looked at it, and what the journal has is not stored twice. What is stored counts as
 * told late.
 */
@Service
public class Diary {

	/** Nobody of the household: the paper itself. */
	private static final UUID PAPER = new UUID(0, 0);

	private static final LocalTime NOON = LocalTime.NOON;

	private final MessageReader reader = MessageReader.standard();

	private final Journal journal;

	private final Clock clock;

	Diary(Journal journal, Clock clock) {
		this.journal = journal;
		this.clock = clock;
	}

	/**
	 * What would be stored, row by row.
	 * @param dog the dog
	 * @param text the diary as CSV or JSON
	 * @return a line for each row, in order
	 * @throws DiaryProblem when it cannot be taken apart into rows
	 */
	@Transactional(readOnly = true)
	public List<DiaryLine> read(Dog dog, String text) {
		LocalDate today = this.clock.instant().atZone(dog.household().timeZone()).toLocalDate();
		Set<Object> known = known(dog);
		return DiaryRows.read(text).stream().map((row) -> read(dog, row, today, known)).toList();
	}

	/**
	 * Stores all lines that are read and not known yet.
	 * @param dog the dog
	 * @param text the diary as CSV or JSON
	 * @param by who brings it
	 * @return how many lines were stored
	 * @throws DiaryProblem when it cannot be taken apart into rows
	 */
	@Transactional
	public int store(Dog dog, String text, String by) {
		Instant now = this.clock.instant();
		Teller teller = new Teller(PAPER, "paper diary, by " + by);
		List<DiaryLine> lines = read(dog, text).stream()
			.filter((line) -> line.standing() == DiaryLine.Standing.READ)
			.toList();
		for (DiaryLine line : lines) {
			Said said = new Said(line.said(), now, teller.name());
			line.walks().forEach((walk) -> this.journal.write(dog.id(), walk, teller, said));
			if (line.morning() != null) {
				this.journal.write(dog.id(), line.morning(), teller, said);
			}
		}
		return lines.size();
	}

	/** A walk is known by its day and minutes, a morning by its day. */
	private Set<Object> known(Dog dog) {
		Set<Object> known = new HashSet<>();
		this.journal.walks(dog.id()).forEach((walk) -> known.add(key(walk.facts())));
		this.journal.mornings(dog.id()).forEach((morning) -> known.add(morning.facts().date()));
		return known;
	}

	private static List<Object> key(WalkFacts walk) {
		return List.of(walk.date(), Objects.requireNonNullElse(walk.minutes(), -1.0),
				Objects.requireNonNullElse(walk.start(), NOON));
	}

	private DiaryLine read(Dog dog, DiaryRow row, LocalDate today, Set<Object> known) {
		try {
			LocalDate date = row.date();
			if (date.isAfter(today)) {
				return DiaryLine.notRead(row, "That day has not come yet.");
			}
			Question about = row.about();
			Reading reading = reading(dog, row, about, date);
			if (about == Question.MORNING) {
				return morning(row, date, reading, known);
			}
			return walk(row, date, reading, known);
		}
		catch (DiaryProblem problem) {
			return DiaryLine.notRead(row, problem.getMessage());
		}
	}

	private Reading reading(Dog dog, DiaryRow row, Question about, LocalDate date) {
		LocalTime time = row.time();
		return this.reader
			.read(new OwnerMessage(row.said(), about, date.atTime((time != null) ? time : LocalTime.of(20, 0)),
					dog.name(), Set.copyOf(dog.medications()), dog.household().speech().language()));
	}

	private static DiaryLine walk(DiaryRow row, LocalDate date, Reading reading, Set<Object> known) {
		List<WalkFacts> walks = walks(row, date, reading);
		if (walks.isEmpty()) {
			return DiaryLine.notRead(row, "No walk was found in it. Give 'minutes', or write how long it was.");
		}
		boolean all = walks.stream().allMatch((walk) -> known.contains(key(walk)));
		walks.forEach((walk) -> known.add(key(walk)));
		return line(row, walks, null, all, reading);
	}

	private static List<WalkFacts> walks(DiaryRow row, LocalDate date, Reading reading) {
		Double minutes = row.minutes();
		if (minutes != null) {
			return List.of(new WalkFacts(date, row.time(), minutes, minutes, minutes, null, false, reading.overall(),
					reading.signs(), List.of()));
		}
		List<WalkFacts> walks = new ArrayList<>();
		for (WalkTold told : reading.walks()) {
			boolean last = walks.size() == reading.walks().size() - 1;
			if (told.minutes() != null || told.distanceMetres() != null) {
				walks.add(new WalkFacts(date, (told.start() != null) ? told.start() : row.time(), told.minutes(),
						told.minutesLow(), told.minutesHigh(), told.distanceMetres(), false,
						last ? reading.overall() : null, last ? reading.signs() : List.of(), reading.unsure()));
			}
		}
		return walks;
	}

	private static DiaryLine morning(DiaryRow row, LocalDate date, Reading reading, Set<Object> known) {
		if (reading.signs().isEmpty() && reading.overall() == null && reading.stiffMinutes() == null) {
			return DiaryLine.notRead(row, "Nothing about the morning was found in it.");
		}
		MorningFacts morning = new MorningFacts(date, reading.stiffMinutes(), reading.overall(), reading.signs(),
				reading.unsure());
		return line(row, List.of(), morning, !known.add(date), reading);
	}

	private static DiaryLine line(DiaryRow row, List<WalkFacts> walks, @Nullable MorningFacts morning, boolean isKnown,
			Reading reading) {
		String urgent = (reading.level().compareTo(Level.SAME_DAY) >= 0)
				? "Words that would have raised an alert: " + String.join("; ", reading.levelReasons()) + "." : "";
		return new DiaryLine(row.number(), row.fields().getOrDefault("date", ""), row.said(), walks, morning,
				isKnown ? DiaryLine.Standing.KNOWN : DiaryLine.Standing.READ,
				isKnown ? "The journal has this already." : urgent);
	}

}
