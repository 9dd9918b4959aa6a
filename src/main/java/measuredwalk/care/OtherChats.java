package measuredwalk.care;

import java.time.LocalDate;
import java.util.Map;
import java.util.Objects;

import measuredwalk.conversations.CheckIns;
import measuredwalk.conversations.Phrase;
import measuredwalk.conversations.Replies;
import measuredwalk.messaging.Outbox;
import org.springframework.stereotype.Component;

/** What one carer told need not be asked of another any more. */
@Component
class OtherChats {

	private final CheckIns checkIns;

	private final Outbox outbox;

	private final Replies replies;

	OtherChats(CheckIns checkIns, Outbox outbox, Replies replies) {
		this.checkIns = checkIns;
		this.outbox = outbox;
		this.replies = replies;
	}

	void told(Turn turn, Written written) {
		if (written.morning() != null) {
			close(turn, CheckIns.NEXT_MORNING, written.morning().facts().date(), phrase(turn));
		}
		if (written.newWalk()) {
			LocalDate date = Objects.requireNonNull(written.lastWalk()).facts().date();
			close(turn, CheckIns.AFTER_WALK, date, Phrase.ALREADY_TOLD_WALK);
		}
	}

	private static Phrase phrase(Turn turn) {
		return (turn.dogs().size() > 1) ? Phrase.ALREADY_TOLD_MORNING_OF : Phrase.ALREADY_TOLD_MORNING;
	}

	/** In the quiet hours it closes without a word. */
	private void close(Turn turn, String conversation, LocalDate date, Phrase phrase) {
		boolean quiet = turn.dog().household().hours().quietAt(turn.time().toLocalTime());
		this.checkIns.openElsewhere(turn.dog().id(), conversation, date, turn.chatId()).forEach((open) -> {
			this.checkIns.close(open.chatId());
			if (!quiet) {
				new Reply(this.outbox, this.replies, open.chatId(), "told/" + open.id()).say(phrase,
						Map.of("carer", turn.carer().name(), "dog", turn.dog().name()));
			}
		});
	}

}
