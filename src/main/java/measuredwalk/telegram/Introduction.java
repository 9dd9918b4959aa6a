package measuredwalk.telegram;

import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;

import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.stereotype.Component;
import org.telegram.telegrambots.meta.api.methods.GetMe;
import org.telegram.telegrambots.meta.api.methods.commands.SetMyCommands;
import org.telegram.telegrambots.meta.api.methods.updates.DeleteWebhook;
import org.telegram.telegrambots.meta.api.methods.updates.SetWebhook;
import org.telegram.telegrambots.meta.api.objects.User;
import org.telegram.telegrambots.meta.api.objects.commands.BotCommand;

/**
 * What is said to the Bot API once at the start: how updates shall come, and which
 * commands there are.
 */
@Component
@WithToken
class Introduction {

	/** In the order in which the chat program lists them. */
	private static final List<String> COMMANDS = List.of("walk", "morning", "today", "why", "log", "signs", "undo",
			"hours", "language", "share", "export", "leave", "erase", "help", "stop", "start");

	private static final Duration PAUSE = Duration.ofSeconds(30);

	private static final Logger log = LoggerFactory.getLogger(Introduction.class);

	private final BotApi api;

	private final TelegramSettings settings;

	private volatile BotIdentity identity;

	private volatile boolean complete;

	private long nextAttemptNanos = System.nanoTime();

	Introduction(BotApi api, TelegramSettings settings) {
		this.api = api;
		this.settings = settings;
		this.identity = new BotIdentity(settings.botId(), "");
	}

	BotIdentity identity() {
		return this.identity;
	}

	boolean complete() {
		return this.complete;
	}

	/** After a conflict, the way that updates come is chosen again at once. */
	synchronized void again() {
		this.complete = false;
		this.nextAttemptNanos = System.nanoTime();
	}

	/**
	 * Introduces the bot as far as the server lets it; what fails is tried again later.
	 */
	synchronized void attempt() {
		if (this.complete || this.nextAttemptNanos - System.nanoTime() > 0) {
			return;
		}
		this.nextAttemptNanos = System.nanoTime() + PAUSE.toNanos();
		boolean done = step("the way that updates come", this::chooseWay);
		done &= step("the bot's own name", this::askWhoWeAre);
		done &= step("the list of commands", this::tellCommands);
		this.complete = done;
	}

	private static boolean step(String what, Runnable call) {
		try {
			call.run();
			return true;
		}
		catch (BotApiProblem ex) {
			log.warn("Telegram did not take {} and is asked again in {} s: {}.", what, PAUSE.toSeconds(),
					ex.getMessage());
			return false;
		}
	}

	private void askWhoWeAre() {
		User me = this.api.call(new GetMe());
		this.identity = new BotIdentity(me.getId(), (me.getUserName() != null) ? me.getUserName() : "");
		log.info("Telegram knows this bot as @{}.", this.identity.username());
	}

	private void chooseWay() {
		if (this.settings.webhook()) {
			this.api.call(SetWebhook.builder()
				.url(this.settings.webhookUrl())
				.secretToken(this.settings.webhookSecret())
				.allowedUpdates(FetchUpdates.wanted())
				.build());
		}
		else {
			this.api.call(DeleteWebhook.builder().dropPendingUpdates(false).build());
		}
	}

	/** The usual list, and one for each other language that there is a file for. */
	private void tellCommands() {
		this.api.call(SetMyCommands.builder().commands(commands(Locale.ROOT)).build());
		for (String language : ResourceBundle.getBundle("measuredwalk.telegram.languages")
			.getString("commands")
			.split(" +", -1)) {
			this.api.call(SetMyCommands.builder()
				.commands(commands(Locale.forLanguageTag(language)))
				.languageCode(language)
				.build());
		}
	}

	private static List<BotCommand> commands(Locale locale) {
		ResourceBundle words = words(locale);
		return COMMANDS.stream().map((command) -> new BotCommand(command, words.getString(command))).toList();
	}

	private static ResourceBundle words(Locale locale) {
		return ResourceBundle.getBundle("measuredwalk.telegram.commands", locale,
				ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));
	}

}
