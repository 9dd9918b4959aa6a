package measuredwalk.telegram;

import java.io.IOException;
import java.util.List;

import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import org.jspecify.annotations.Nullable;
import org.telegram.telegrambots.meta.api.methods.botapimethods.BotApiMethod;
import org.telegram.telegrambots.meta.api.objects.ApiResponse;
import org.telegram.telegrambots.meta.exceptions.TelegramApiRequestException;

/**
 * The method {@code getUpdates}, answered as raw JSON: the library's own decodes a whole
 * batch at once, so that one update which it does not understand would hold up all.
 */
final class FetchUpdates extends BotApiMethod<ArrayNode> {

	private static final List<String> WANTED = List.of("message", "edited_message", "callback_query", "my_chat_member");

	/** The most that the Bot API gives at once, from its documentation of getUpdates. */
	private static final int MOST_AT_ONCE = 100;

	private final @Nullable Long offset;

	private final long timeoutSeconds;

	/**
	 * Asks for updates.
	 * @param offset every update below this one is confirmed and never comes again; null:
	 * from the earliest unconfirmed one on
	 * @param timeoutSeconds how long the server may wait for one
	 */
	FetchUpdates(@Nullable Long offset, long timeoutSeconds) {
		this.offset = offset;
		this.timeoutSeconds = timeoutSeconds;
	}

	static List<String> wanted() {
		return WANTED;
	}

	@JsonProperty("offset")
	@Nullable Long offset() {
		return this.offset;
	}

	@JsonProperty("limit")
	int limit() {
		return MOST_AT_ONCE;
	}

	@JsonProperty("timeout")
	long timeoutSeconds() {
		return this.timeoutSeconds;
	}

	@JsonProperty("allowed_updates")
	List<String> allowedUpdates() {
		return WANTED;
	}

	@Override
	public String getMethod() {
		return "getUpdates";
	}

	@Override
	public ArrayNode deserializeResponse(String answer) throws TelegramApiRequestException {
		try {
			JsonNode response = OBJECT_MAPPER.readTree(answer);
			if (response.path("ok").asBoolean() && response.get("result") instanceof ArrayNode updates) {
				return updates;
			}
			throw new TelegramApiRequestException("Updates were not given",
					OBJECT_MAPPER.treeToValue(response, ApiResponse.class));
		}
		catch (IOException ex) {
			throw new TelegramApiRequestException("The answer is no JSON", ex);
		}
	}

}
