package measuredwalk.care;

import measuredwalk.conversations.CheckIns;
import measuredwalk.messaging.OpenQuestions;
import org.springframework.stereotype.Component;

/** A check-in's question waits in a chat until it is answered or over. */
@Component
class WaitingQuestions implements OpenQuestions {

	private final CheckIns checkIns;

	WaitingQuestions(CheckIns checkIns) {
		this.checkIns = checkIns;
	}

	@Override
	public boolean waitsIn(long chatId) {
		return this.checkIns.current(chatId).filter((open) -> !open.asked().isEmpty()).isPresent();
	}

}
