package measuredwalk.care;

import measuredwalk.conversations.CheckIns;
import measuredwalk.messaging.ChatGone;
import measuredwalk.prompts.Prompts;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;

/** A question that could not be put to one carer is put to another without delay. */
@Component
class Unreachable {

	private final CheckIns checkIns;

	private final Prompts prompts;

	Unreachable(CheckIns checkIns, Prompts prompts) {
		this.checkIns = checkIns;
		this.prompts = prompts;
	}

	@EventListener
	void gone(ChatGone chat) {
		this.checkIns.current(chat.chatId())
			.flatMap((open) -> this.checkIns.unanswered(open.id()))
			.ifPresent((open) -> this.prompts.remindNow(open.id()));
	}

}
