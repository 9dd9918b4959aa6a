package measuredwalk.care;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

import measuredwalk.conversations.CheckIn;
import measuredwalk.conversations.CheckIns;
import measuredwalk.conversations.Phrase;
import measuredwalk.conversations.Slot;
import measuredwalk.household.Carer;
import measuredwalk.household.Dog;
import measuredwalk.journal.Note;
import measuredwalk.journal.NoteTopic;
import measuredwalk.journal.Notes;
import measuredwalk.prompts.Outcome;
import measuredwalk.reading.Reading;
import measuredwalk.signs.Coded;
import measuredwalk.signs.Sign;
import measuredwalk.signs.SignKind;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/**
 * One question a week, each week another one; the answer is kept in the owner's words.
 */
@Component
class WeeklyQuestion {

	/** Somebody who has just begun has questions enough. */
	private static final int FIRST_AFTER_DAYS = 7;

	private static final List<Slot> TOPICS = List.of(Slot.WEIGHT, Slot.MUSCLE, Slot.MEDICINES, Slot.ENJOYMENT);

	private static final Set<SignKind> OF_THE_WEEK = EnumSet.of(SignKind.WEIGHT_LOSS, SignKind.MUSCLE_WASTING);

	private final CheckIns checkIns;

	private final Notes notes;

	private final Asking asking;

	WeeklyQuestion(CheckIns checkIns, Notes notes, Asking asking) {
		this.checkIns = checkIns;
		this.notes = notes;
		this.asking = asking;
	}

	Outcome ask(Dog dog, Carer carer, LocalDate date) {
		long days = ChronoUnit.DAYS.between(dog.enrolledOn(), date);
		if (days < FIRST_AFTER_DAYS || this.checkIns.held(dog.id(), CheckIns.WEEKLY, date)) {
			return Outcome.SETTLED;
		}
		if (this.asking.waits(carer) || isOpen(this.checkIns.current(carer.chatId()).orElse(null))) {
			return Outcome.NOT_NOW;
		}
		Set<Slot> others = EnumSet.copyOf(TOPICS);
		others.remove(TOPICS.get((int) (days / FIRST_AFTER_DAYS % TOPICS.size())));
		this.asking.ask(dog, carer, CheckIns.WEEKLY, date, others, "weekly/" + dog.id() + "/" + date);
		return Outcome.SETTLED;
	}

	/**
	 * Keeps the answer. A message that tells of a walk, of signs or of a question of its
	 * own is no answer, and ends the waiting for one.
	 * @return true when it was the answer
	 */
	boolean answered(Turn turn, Reading reading, @Nullable CheckIn open, Reply reply) {
		if (!isOpen(open)) {
			return false;
		}
		this.checkIns.close(turn.chatId());
		boolean other = !reading.walks().isEmpty() || !reading.signs().stream().allMatch(WeeklyQuestion::ofTheWeek)
				|| turn.text().indexOf('?') >= 0;
		if (other) {
			return false;
		}
		String topic = open.asked().iterator().next().code();
		this.notes.keep(turn.dog().id(), new Note(Coded.of(NoteTopic.class, topic), open.aboutDate(), turn.said()));
		reply.say(Phrase.NOTED);
		return true;
	}

	static boolean isOpen(@Nullable CheckIn open) {
		return open != null && open.conversation().equals(CheckIns.WEEKLY) && !open.asked().isEmpty();
	}

	private static boolean ofTheWeek(Sign sign) {
		return OF_THE_WEEK.contains(sign.kind());
	}

}
