package measuredwalk.diary;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.UUID;

import measuredwalk.amounts.WalkAmount;
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
		KnownEntries known = known(dog);
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

	private KnownEntries known(Dog dog) {
		KnownEntries known = new KnownEntries();
		this.journal.walks(dog.id()).forEach((walk) -> known.add(walk.facts()));
		this.journal.mornings(dog.id()).forEach((morning) -> known.add(morning.facts().date()));
		return known;
	}

	private DiaryLine read(Dog dog, DiaryRow row, LocalDate today, KnownEntries known) {
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
			return walk(dog, row, date, reading, known);
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

	private static DiaryLine walk(Dog dog, DiaryRow row, LocalDate date, Reading reading, KnownEntries known) {
		List<WalkFacts> walks = walks(dog, row, date, reading, known);
		if (walks.isEmpty()) {
			return DiaryLine.notRead(row, "No walk was found in it. Give 'minutes', or write how long it was.");
		}
		long fresh = walks.stream().filter(known::add).count();
		return line(row, walks, null, fresh == 0, reading);
	}

	/** A row's own minutes are surer than what its words say. */
	private static List<WalkFacts> walks(Dog dog, DiaryRow row, LocalDate date, Reading reading, KnownEntries known) {
		Double minutes = row.minutes();
		if (minutes != null) {
			return List.of(new WalkFacts(date, row.time(), minutes, minutes, minutes, null, false, reading.overall(),
					reading.signs(), List.of(), reading.loadsOf(0)));
		}
		List<WalkFacts> walks = new ArrayList<>();
		int read = 0;
		for (WalkTold told : reading.walks()) {
			WalkFacts walk = WalkAmount.facts(dog, date, told.undated(), known::walks)
				.withUnsure(reading.unsure())
				.withLoads(reading.loadsOf(read++));
			if (walk.minutes() != null) {
				walks.add((walk.start() != null) ? walk : walk.withStart(row.time()));
			}
		}
		if (!walks.isEmpty()) {
			int last = walks.size() - 1;
			walks.set(last, walks.get(last).withOverall(reading.overall()).withSigns(reading.signs()));
		}
		return walks;
	}

	private static DiaryLine morning(DiaryRow row, LocalDate date, Reading reading, KnownEntries known) {
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
