package measuredwalk.care;

import java.util.List;
import java.util.Locale;
import java.util.Map;

import measuredwalk.conversations.CheckIns;
import measuredwalk.conversations.Part;
import measuredwalk.conversations.Phrase;
import measuredwalk.conversations.Replies;
import measuredwalk.household.Households;
import measuredwalk.messaging.Outbox;
import org.springframework.stereotype.Component;

/** {@code /leave}: a carer goes; the last one says what becomes of the log. */
@Component
class Leaving {

	private final Households households;

	private final CheckIns checkIns;

	private final Outbox outbox;

	private final Replies replies;

	private final Erasing erasing;

	private final Figures figures;

	Leaving(Households households, CheckIns checkIns, Outbox outbox, Replies replies, Erasing erasing,
			Figures figures) {
		this.figures = figures;
		this.households = households;
		this.checkIns = checkIns;
		this.outbox = outbox;
		this.replies = replies;
		this.erasing = erasing;
	}

	void command(Turn turn, Reply reply) {
		this.checkIns.close(turn.chatId());
		if (this.households.carersOf(turn.carer().householdId()).size() > 1) {
			leave(turn, reply);
		}
		else {
			reply.ask(Phrase.LEAVE_LAST, places(turn), List.of(this.replies.part(Part.KEEP_FOR_CLINIC)));
		}
	}

	/**
	 * Takes the last carer's answer, if this was asked last.
	 * @return true when it was the answer
	 */
	boolean answered(Turn turn, Reply reply) {
		String text = turn.english().strip().toLowerCase(Locale.ROOT);
		boolean erase = Erasing.confirmed(turn, this.figures.and(turn.homeNames()));
		if (!(erase || text.startsWith("keep")) || !askedLast(turn)) {
			return false;
		}
		if (erase) {
			turn.home().forEach((dog) -> this.erasing.erase(turn.about(dog), reply));
		}
		else {
			leave(turn, reply);
		}
		return true;
	}

	private void leave(Turn turn, Reply reply) {
		this.households.leave(turn.carer().id());
		reply.say(Phrase.LEFT, places(turn));
	}

	private boolean askedLast(Turn turn) {
		String question = this.replies.say(Phrase.LEAVE_LAST, places(turn));
		return this.outbox.lastText(turn.chatId()).filter(question::equals).isPresent();
	}

	private Map<String, String> places(Turn turn) {
		return Map.of("dog", this.figures.and(turn.homeNames()));
	}

}
