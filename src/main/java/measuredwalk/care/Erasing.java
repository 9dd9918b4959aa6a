package measuredwalk.care;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

import measuredwalk.conversations.CheckIns;
import measuredwalk.conversations.Phrase;
import measuredwalk.conversations.Replies;
import measuredwalk.household.Carer;
import measuredwalk.household.Households;
import measuredwalk.messaging.Chats;
import measuredwalk.messaging.Outbox;
import measuredwalk.prompts.Prompts;
import org.springframework.stereotype.Component;

/**
 * {@code /erase}: a dog's data go when its name is typed with the word, right after the
 * question. The chats of carers without another dog are forgotten too, but only after the
 * last words have gone out.
 */
@Component
class Erasing {

	private static final Set<String> NO = Set.of("no", "no thanks", "no thank you", "keep it");

	private final Households households;

	private final CheckIns checkIns;

	private final Outbox outbox;

	private final Replies replies;

	private final Prompts prompts;

	private final Chats chats;

	Erasing(Households households, CheckIns checkIns, Outbox outbox, Replies replies, Prompts prompts, Chats chats) {
		this.households = households;
		this.checkIns = checkIns;
		this.outbox = outbox;
		this.replies = replies;
		this.prompts = prompts;
		this.chats = chats;
	}

	void ask(Turn turn, Reply reply) {
		this.checkIns.close(turn.chatId());
		reply.say(question(turn));
	}

	private String question(Turn turn) {
		return this.replies.say(Phrase.ERASE, Map.of("dog", turn.dog().name()));
	}

	/**
	 * Takes the answer, if this was asked last; any other words than those leave all as
	 * it is.
	 * @return true when it was the answer
	 */
	boolean answered(Turn turn, Reply reply) {
		boolean confirmed = confirmed(turn, turn.dog().name());
		if (!(confirmed || NO.contains(typed(turn))) || !askedLast(turn)) {
			return false;
		}
		if (confirmed) {
			erase(turn, reply);
		}
		else {
			reply.say(Phrase.NOT_ERASED);
		}
		return true;
	}

	/** Whether somebody typed the word and the name, and nothing else. */
	static boolean confirmed(Turn turn, String name) {
		return typed(turn).equals("erase " + name.toLowerCase(Locale.ROOT));
	}

	private static String typed(Turn turn) {
		return turn.english().strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
	}

	void erase(Turn turn, Reply reply) {
		List<Carer> others = this.households.carersOf(turn.carer().householdId())
			.stream()
			.filter((carer) -> carer.chatId() != turn.chatId())
			.toList();
		List<Long> withoutDog = this.households.erase(turn.dog().id()).orElse(List.of());
		others.forEach((carer) -> tell(turn, carer));
		reply.say(Phrase.ERASED, Map.of("dog", turn.dog().name()));
		withoutDog.forEach(this.prompts::farewell);
	}

	private boolean askedLast(Turn turn) {
		return this.outbox.lastText(turn.chatId()).filter(question(turn)::equals).isPresent();
	}

	private void tell(Turn turn, Carer carer) {
		new Reply(this.outbox, this.replies, carer.chatId(), "erased/" + turn.dog().id()).say(Phrase.ERASED_BY_ANOTHER,
				Map.of("dog", turn.dog().name(), "carer", turn.carer().name()));
	}

	/** Forgets a chat and all that was said in it, unless it has begun anew meanwhile. */
	void forget(long chatId) {
		if (this.households.carerIn(chatId).isEmpty() && this.checkIns.current(chatId).isEmpty()) {
			this.chats.forget(List.of(chatId));
		}
	}

}
