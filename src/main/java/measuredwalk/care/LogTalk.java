package measuredwalk.care;

import measuredwalk.messaging.OutgoingMessage;
import org.springframework.stereotype.Component;

/** {@code /log}: the last days in words, and the fortnight as a picture or in words. */
@Component
class LogTalk {

	private static final String IN_WORDS = "words";

	private final LogWords words;

	private final Fortnight fortnight;

	LogTalk(LogWords words, Fortnight fortnight) {
		this.words = words;
		this.fortnight = fortnight;
	}

	void command(Turn turn, String wish, Reply reply) {
		if (Ears.english(wish, turn.speech(), turn.allNames()).contains(IN_WORDS)) {
			reply.say(this.fortnight.inWords(turn.dog(), turn.today())
				.map(turn::named)
				.orElseGet(() -> this.words.lastDays(turn)));
			return;
		}
		reply.say(this.words.lastDays(turn));
		this.fortnight.shown(turn.dog(), turn.today()).ifPresent((OutgoingMessage picture) -> reply.say(picture));
	}

}
