package measuredwalk.telegram;

import java.net.URI;
import java.time.Duration;
import java.util.Locale;
import java.util.regex.Pattern;

import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.boot.context.properties.bind.DefaultValue;
import org.telegram.telegrambots.meta.TelegramUrl;

/**
 * Settings of the Telegram channel.
 *
 * @param token the bot's token; blank: no Telegram
 * @param apiUrl base URL of the Bot API server; blank: the public one
 * @param webhookUrl public address that updates are sent to; blank: long polling
 * @param webhookSecret what each update sent to that address must carry
 * @param messagesPerSecond how many messages go out in a second to all chats together
 * @param chatPause least time between two messages to one chat
 * @param groupMessagesPerMinute how many messages go to one group in a minute
 * @param deepInbox no more is fetched while more messages than this wait to be handled
 * @param longPoll how long a request for updates may wait for one
 */
@ConfigurationProperties("measuredwalk.telegram")
record TelegramSettings(@DefaultValue("") String token, @DefaultValue("") String apiUrl,
		@DefaultValue("") String webhookUrl, @DefaultValue("") String webhookSecret,
		@DefaultValue("30") double messagesPerSecond, @DefaultValue("1s") Duration chatPause,
		@DefaultValue("20") int groupMessagesPerMinute, @DefaultValue("2000") int deepInbox,
		@DefaultValue("25s") Duration longPoll) {

	/** What the Bot API allows as a secret, from its documentation of setWebhook. */
	private static final Pattern SECRET = Pattern.compile("[A-Za-z0-9_-]{1,256}");

	TelegramSettings {
		token = token.strip();
		apiUrl = apiUrl.strip();
		webhookUrl = webhookUrl.strip();
		webhookSecret = webhookSecret.strip();
		if (!webhookUrl.isEmpty() && !SECRET.matcher(webhookSecret).matches()) {
			throw new IllegalArgumentException("measuredwalk.telegram.webhook-secret must be set together with"
					+ " webhook-url, to 1 to 256 letters, digits, _ and -; without it anybody could send updates.");
		}
		if (messagesPerSecond <= 0 || groupMessagesPerMinute < 1) {
			throw new IllegalArgumentException("measuredwalk.telegram.messages-per-second and"
					+ " group-messages-per-minute must be above 0, or nothing could be sent.");
		}
	}

	boolean webhook() {
		return !this.webhookUrl.isEmpty();
	}

	/** The path of the webhook's address; the application answers at the same path. */
	String webhookPath() {
		String path = URI.create(this.webhookUrl).getPath();
		return (path == null || path.isEmpty()) ? "/" : path;
	}

	TelegramUrl server() {
		if (this.apiUrl.isEmpty()) {
			return TelegramUrl.DEFAULT_URL;
		}
		URI uri = URI.create(this.apiUrl);
		if (uri.getScheme() == null || uri.getHost() == null) {
			throw new IllegalArgumentException("measuredwalk.telegram.api-url is '" + this.apiUrl
					+ "'; give a full address such as http://127.0.0.1:8081.");
		}
		String scheme = uri.getScheme().toLowerCase(Locale.ROOT);
		int usual = scheme.equals("https") ? 443 : 80;
		return new TelegramUrl(scheme, uri.getHost(), (uri.getPort() > 0) ? uri.getPort() : usual, false);
	}

	/** The path that stands before {@code /bot<token>/}, without a slash at its end. */
	String serverPath() {
		String path = this.apiUrl.isEmpty() ? "" : URI.create(this.apiUrl).getPath();
		return (path == null) ? "" : path.replaceAll("/+$", "");
	}

	/** The bot's own user id, which every token begins with. */
	long botId() {
		String id = this.token.split(":", 2)[0];
		return id.matches("\\d{1,18}") ? Long.parseLong(id) : 0;
	}

	/** The token and the secret stay out of logs. */
	@Override
	public String toString() {
		return "TelegramSettings[apiUrl=" + this.apiUrl + ", webhookUrl=" + this.webhookUrl + "]";
	}

}
