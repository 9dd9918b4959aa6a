package measuredwalk.care;

import java.util.Map;
import java.util.Optional;

import measuredwalk.conversations.CheckIn;
import measuredwalk.conversations.Phrase;
import measuredwalk.conversations.Replies;
import measuredwalk.messaging.Outbox;
import measuredwalk.reading.Reading;
import org.springframework.stereotype.Component;

/** Answers messages that bring no facts: one kind ask-back, never a loop. */
@Component
class SmallTalk {

	private final Outbox outbox;

	private final Replies replies;

	private final ClinicCall call;

	private final ReadingMeters meters;

	private final Figures figures;

	SmallTalk(Outbox outbox, Replies replies, ClinicCall call, ReadingMeters meters, Figures figures) {
		this.meters = meters;
		this.figures = figures;
		this.outbox = outbox;
		this.replies = replies;
		this.call = call;
	}

	void answer(Turn turn, Reading reading, Reply reply) {
		Optional<String> courtesy = this.replies.courtesy(turn.text());
		if (courtesy.isPresent()) {
			reply.say(courtesy.get());
		}
		else if (asksSomething(turn, reading)) {
			reply.say(Phrase.ASK_CLINIC, Map.of("call", this.call.whomToCall(this.figures.or(turn.allNames()))));
		}
		else if (reading.understood()) {
			reply.say(Phrase.NOTED);
		}
		else {
			this.meters.missed();
			reply.say(askedBackBefore(turn.chatId()) ? Phrase.KEPT_FOR_CLINIC : Phrase.NOT_UNDERSTOOD);
		}
	}

	/** While a question waits, its own second wording is the ask-back. */
	void answerInside(Turn turn, Reading reading, CheckIn open, Reply reply) {
		if (!reading.understood()) {
			this.meters.missed();
		}
		if (asksSomething(turn, reading)) {
			reply.say(Phrase.ASK_CLINIC, Map.of("call", this.call.whomToCall(this.figures.or(turn.allNames()))));
		}
		else if (!reading.understood() && open.askedAgain()) {
			reply.say(Phrase.KEPT_FOR_CLINIC);
		}
	}

	private static boolean asksSomething(Turn turn, Reading reading) {
		return reading.understood() && turn.text().indexOf('?') >= 0;
	}

	private boolean askedBackBefore(long chatId) {
		String last = this.outbox.lastText(chatId).orElse("");
		return last.equals(this.replies.say(Phrase.NOT_UNDERSTOOD))
				|| last.equals(this.replies.say(Phrase.KEPT_FOR_CLINIC));
	}

}
