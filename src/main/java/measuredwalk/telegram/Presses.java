package measuredwalk.telegram;

import java.time.Clock;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

import jakarta.annotation.PreDestroy;
import measuredwalk.messaging.Arrival;
import measuredwalk.messaging.Inbox;
import measuredwalk.messaging.Outbox;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.stereotype.Component;
import org.telegram.telegrambots.meta.api.methods.AnswerCallbackQuery;

/** A pressed button is taken as if its words had been typed. */
@Component
@WithToken
class Presses {

	private static final Logger log = LoggerFactory.getLogger(Presses.class);

	private final BotApi api;

	private final Inbox inbox;

	private final Outbox outbox;

	private final Clock clock;

	private final ExecutorService answering = Executors.newSingleThreadExecutor((task) -> {
		Thread thread = new Thread(task, "telegram-presses");
		thread.setDaemon(true);
		return thread;
	});

	Presses(BotApi api, Inbox inbox, Outbox outbox, Clock clock) {
		this.api = api;
		this.inbox = inbox;
		this.outbox = outbox;
		this.clock = clock;
	}

	/** Stores what was chosen, unless this chat was never offered it. */
	void store(Incoming.Pressed pressed) {
		Optional<ButtonData> data = ButtonData.parse(pressed.data());
		Optional<String> choice = data.flatMap((button) -> this.outbox.choice(TelegramChannel.NAME, pressed.address(),
				button.outboxId(), button.index()));
		if (choice.isEmpty()) {
			log.warn("A button that this chat was never offered was pressed; it is ignored.");
			return;
		}
		String prefix = "tap:" + data.get().outboxId() + ":" + data.get().index() + ":";
		if (!pressedJustNow(pressed.address(), prefix)) {
			this.inbox.receive(TelegramChannel.NAME, new Arrival(pressed.address(), prefix + pressed.callbackId(),
					pressed.senderName(), choice.get(), null, this.clock.instant()));
		}
	}

	/**
	 * A button pressed twice in a row was meant once; the second press would answer the
	 * next question.
	 */
	private boolean pressedJustNow(String address, String prefix) {
		return this.inbox.lastKey(TelegramChannel.NAME, address).filter((key) -> key.startsWith(prefix)).isPresent();
	}

	/**
	 * Tells the chat program that the press has arrived. When this is lost, the button
	 * shines a little longer and nothing else.
	 */
	void answer(Incoming.Pressed pressed) {
		this.answering.execute(() -> {
			try {
				this.api.call(AnswerCallbackQuery.builder().callbackQueryId(pressed.callbackId()).build());
			}
			catch (BotApiProblem ex) {
				log.debug("A press could not be answered: {}.", ex.getMessage());
			}
		});
	}

	@PreDestroy
	void end() {
		this.answering.shutdownNow();
	}

}
