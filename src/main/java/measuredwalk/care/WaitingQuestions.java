package measuredwalk.care;

import java.time.Clock;
import java.util.Optional;
import java.util.Set;

import measuredwalk.conversations.CheckIn;
import measuredwalk.conversations.CheckIns;
import measuredwalk.messaging.IncomingMessage;
import measuredwalk.messaging.OpenQuestions;
import measuredwalk.reading.Level;
import measuredwalk.reading.Reading;
import org.springframework.stereotype.Component;

/**
 * A check-in's question waits in a chat until it is answered or over. In a group people
 * also talk to each other meanwhile: what tells nothing of the dog is not heard, so that
 * it neither is kept nor makes the bot ask again.
 */
@Component
class WaitingQuestions implements OpenQuestions {

	/** Any words may answer these: a name, or how somebody finds something. */
	private static final Set<String> IN_ANY_WORDS = Set.of(CheckIns.WELCOME, CheckIns.WEEKLY);

	private final CheckIns checkIns;

	private final Turns turns;

	private final Ears ears;

	private final Clock clock;

	WaitingQuestions(CheckIns checkIns, Turns turns, Ears ears, Clock clock) {
		this.checkIns = checkIns;
		this.turns = turns;
		this.ears = ears;
		this.clock = clock;
	}

	@Override
	public boolean answeredBy(long chatId, String text) {
		Optional<CheckIn> waiting = this.checkIns.current(chatId).filter((open) -> !open.asked().isEmpty());
		return waiting.isPresent()
				&& (IN_ANY_WORDS.contains(waiting.get().conversation()) || answers(waiting.get(), text));
	}

	private boolean answers(CheckIn open, String text) {
		IncomingMessage overheard = new IncomingMessage(0, open.chatId(), "", text, this.clock.instant(), null);
		return this.turns.of(overheard)
			.stream()
			.filter((turn) -> turn.dog().id().equals(open.dogId()))
			.anyMatch((turn) -> tells(this.ears.read(turn, open)) || this.ears.onset(turn, open).isPresent());
	}

	/** A bare yes or no is an answer too; a thing that was understood need not be one. */
	private static boolean tells(Reading reading) {
		return !reading.walks().isEmpty() || !reading.signs().isEmpty() || reading.overall() != null
				|| reading.stiffMinutes() != null || reading.correction() != null || reading.answer() != null
				|| reading.noWalk() || reading.level() != Level.NONE;
	}

}
