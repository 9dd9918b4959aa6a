package measuredwalk.care;

import java.util.List;
import java.util.Collection;
import java.util.Optional;
import java.util.Set;

import measuredwalk.conversations.CheckIn;
import measuredwalk.conversations.CheckIns;
import measuredwalk.conversations.Slot;
import measuredwalk.reading.MessageReader;
import measuredwalk.reading.OwnerMessage;
import measuredwalk.reading.Question;
import measuredwalk.reading.Reading;
import measuredwalk.signs.Sign;
import measuredwalk.speech.Speaking;
import measuredwalk.speech.Speech;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** Reads a message in the light of the question that waits for an answer. */
@Component
class Ears {

	/** A longer answer than this tells of something else as well. */
	private static final int LONGEST_ONSET_ANSWER = 6;

	private final MessageReader reader = MessageReader.standard();

	private final CheckIns checkIns;

	private final ReadingMeters meters;

	Ears(CheckIns checkIns, ReadingMeters meters) {
		this.meters = meters;
		this.checkIns = checkIns;
	}

	Reading read(Turn turn, @Nullable CheckIn checkIn) {
		this.meters.read();
		Question question = question(checkIn);
		Reading reading = read(turn, turn.text(), question);
		if (checkIn == null && onlyAsUsual(reading) && morningAwaited(turn)) {
			Reading ofMorning = read(turn, turn.text(), Question.MORNING);
			return ofMorning.walks().isEmpty() ? ofMorning : reading;
		}
		if (checkIn == null && bringsNothing(reading)) {
			return walkOfAnother(turn).or(() -> noWalk(turn)).orElse(reading);
		}
		if (checkIn != null && question != checkIn.reads() && reading.overall() == null && reading.signs().isEmpty()) {
			return read(turn, turn.text(), checkIn.reads());
		}
		if (asks(checkIn, Slot.STIFF_MINUTES) && reading.stiffMinutes() == null) {
			Double minutes = read(turn, "stiff for " + turn.english(), Question.MORNING).stiffMinutes();
			return (minutes != null) ? stiffFor(reading, minutes) : reading;
		}
		return amountKnown(checkIn) && onlyAsUsual(reading) ? read(turn, turn.text(), Question.MORNING) : reading;
	}

	/**
	 * Another carer was asked how the morning is; whoever answers need not be that one.
	 */
	private boolean morningAwaited(Turn turn) {
		return !this.checkIns.openElsewhere(turn.dog().id(), CheckIns.NEXT_MORNING, turn.today(), turn.chatId())
			.isEmpty();
	}

	private static boolean amountKnown(@Nullable CheckIn checkIn) {
		return checkIn != null && checkIn.conversation().equals(CheckIns.AFTER_WALK)
				&& checkIn.settled().contains(Slot.WALK_AMOUNT);
	}

	/**
	 * 'Same as usual' tells of the dog, not of another walk, once the walk's length is
	 * known.
	 */
	private static boolean onlyAsUsual(Reading reading) {
		return reading.signs().isEmpty() && reading.walks().size() == 1 && reading.walks().get(0).minutes() == null
				&& reading.walks().get(0).distanceMetres() == null;
	}

	private static boolean bringsNothing(Reading reading) {
		return reading.walks().isEmpty() && reading.signs().isEmpty() && reading.overall() == null
				&& reading.stiffMinutes() == null && reading.correction() == null;
	}

	/** 'Tarn did 25 and Moss 10': the bare figure is of a walk as the first one is. */
	private Optional<Reading> walkOfAnother(Turn turn) {
		boolean part = !turn.text().equals(turn.message().text());
		boolean ofWalks = part && !read(turn, turn.message().text(), Question.ANY).walks().isEmpty();
		return ofWalks ? Optional.of(read(turn, turn.text(), Question.WALK)) : Optional.empty();
	}

	/** 'No walk today' is an answer that comes before its question. */
	private Optional<Reading> noWalk(Turn turn) {
		return Optional.of(read(turn, turn.text(), Question.WALK)).filter(Reading::noWalk);
	}

	/**
	 * The onset that an answer to 'when did it start?' names. The answer is read as the
	 * end of a sentence whose beginning the question gave.
	 */
	Optional<Onset> onset(Turn turn, CheckIn checkIn) {
		String answer = turn.english().strip();
		if (!asks(checkIn, Slot.ONSET) || answer.split("\\s+").length > LONGEST_ONSET_ANSWER) {
			return Optional.empty();
		}
		String joint = (!answer.isEmpty() && Character.isDigit(answer.charAt(0))) ? "she slowed after " : "she slowed ";
		Reading reading = read(turn, "30 minutes, " + joint + answer, Question.WALK);
		return reading.signs()
			.stream()
			.filter((sign) -> sign.onsetMinute() != null || sign.when() != null)
			.map((Sign sign) -> new Onset(sign.onsetMinute(), sign.when()))
			.findFirst();
	}

	/** Reads an answer about dragging with what it is about before it. */
	Reading aboutDragging(Turn turn, boolean isNew) {
		String about = isNew ? "new dragging of the back leg today. " : "dragged a back foot on the walk. ";
		return read(turn, about + turn.english(), Question.WALK);
	}

	Reading stranger(String text, java.time.LocalDateTime now) {
		return this.reader.read(new OwnerMessage(text, Question.WALK, now, null, Set.of(), Speaking.now().language()));
	}

	/** 'How is it now?' after a walk is answered as 'how is it this morning?' is. */
	private static Question question(@Nullable CheckIn checkIn) {
		if (checkIn == null) {
			return Question.ANY;
		}
		return asks(checkIn, Slot.OVERALL) ? Question.MORNING : checkIn.reads();
	}

	private Reading read(Turn turn, String text, Question question) {
		return this.reader.read(new OwnerMessage(text, question, turn.time(), turn.dog().name(),
				Set.copyOf(turn.dog().medications()), turn.speech().language()));
	}

	/** Words in the English that answers are looked for in. */
	static String english(String text, Speech speech, Collection<String> names) {
		return MessageReader.standard().english(text, speech.language(), names);
	}

	static boolean asks(@Nullable CheckIn checkIn, Slot slot) {
		return checkIn != null && checkIn.asked().equals(Set.of(slot));
	}

	private static Reading stiffFor(Reading reading, double minutes) {
		return new Reading(List.of(), reading.signs(), minutes, reading.overall(), reading.level(),
				reading.levelReasons(), true, List.of(), null, null, reading.answer(), false);
	}

}
