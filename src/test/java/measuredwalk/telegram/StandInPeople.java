package measuredwalk.telegram;

import java.time.Instant;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** The people who write to the bot: makes their updates, with ids that count up. */
final class StandInPeople {

	private final ObjectMapper mapper = new ObjectMapper();

	private final StandInUpdates updates;

	private final AtomicLong nextUpdate;

	private final AtomicInteger nextMessage = new AtomicInteger(1);

	StandInPeople(StandInUpdates updates, long firstUpdate) {
		this.updates = updates;
		this.nextUpdate = new AtomicLong(firstUpdate);
	}

	/** After a quiet week ids may begin anywhere. */
	void goOnFrom(long updateId) {
		this.nextUpdate.set(updateId);
	}

	JsonNode say(long chatId, String text) {
		return add("message", message(chatId).put("text", text));
	}

	JsonNode edit(long chatId, String text) {
		return add("edited_message",
				message(chatId).put("text", text).put("edit_date", Instant.now().getEpochSecond()));
	}

	JsonNode sayInGroup(long chatId, String text) {
		return say(chatId, text);
	}

	JsonNode replyInGroup(long chatId, String text) {
		ObjectNode message = message(chatId).put("text", text);
		ObjectNode before = message.putObject("reply_to_message").put("message_id", 1).put("date", 1);
		before.putObject("chat").put("id", chatId).put("type", "group");
		before.putObject("from").put("id", BotApiStandIn.BOT_ID).put("is_bot", true).put("first_name", "Bot");
		return add("message", message);
	}

	JsonNode speak(long chatId) {
		ObjectNode message = message(chatId);
		message.putObject("voice").put("file_id", "voice-file").put("file_unique_id", "v").put("duration", 3);
		return add("message", message);
	}

	JsonNode show(long chatId, String caption) {
		ObjectNode message = message(chatId);
		if (!caption.isEmpty()) {
			message.put("caption", caption);
		}
		message.putArray("photo")
			.addObject()
			.put("file_id", "photo-file")
			.put("file_unique_id", "p")
			.put("width", 9)
			.put("height", 9);
		return add("message", message);
	}

	/** A group becomes a supergroup: each of the two gets a message that says so. */
	void migrate(long from, long to) {
		add("message", message(from).put("migrate_to_chat_id", to));
		add("message", message(to).put("migrate_from_chat_id", from));
	}

	JsonNode press(long chatId, StandInMessage on, String data) {
		ObjectNode query = this.mapper.createObjectNode()
			.put("id", "press-" + this.nextMessage.getAndIncrement())
			.put("chat_instance", "1")
			.put("data", data);
		query.set("from", from(chatId));
		ObjectNode message = query.putObject("message")
			.put("message_id", on.messageId())
			.put("date", 1)
			.put("text", on.text());
		message.putObject("chat").put("id", chatId).put("type", "private");
		return add("callback_query", query);
	}

	JsonNode membership(long chatId, String status) {
		ObjectNode change = this.mapper.createObjectNode().put("date", 1);
		change.putObject("chat").put("id", chatId).put("type", "private");
		change.set("from", from(chatId));
		change.set("old_chat_member", member("member"));
		change.set("new_chat_member", member(status).put("until_date", 0));
		return add("my_chat_member", change);
	}

	/** An update of a form that no library knows. */
	JsonNode nonsense() {
		return add("message", this.mapper.createArrayNode().add("not").add("a message"));
	}

	/** The same update once more, as after a lost confirmation. */
	void again(JsonNode update) {
		this.updates.add(update.path("update_id").asLong(), update);
	}

	private ObjectNode member(String status) {
		ObjectNode member = this.mapper.createObjectNode().put("status", status);
		member.putObject("user").put("id", BotApiStandIn.BOT_ID).put("is_bot", true).put("first_name", "Bot");
		return member;
	}

	private ObjectNode message(long chatId) {
		ObjectNode message = this.mapper.createObjectNode()
			.put("message_id", this.nextMessage.getAndIncrement())
			.put("date", Instant.now().getEpochSecond());
		message.putObject("chat").put("id", chatId).put("type", (chatId < 0) ? "group" : "private");
		message.set("from", from(Math.abs(chatId)));
		return message;
	}

	private ObjectNode from(long userId) {
		return this.mapper.createObjectNode()
			.put("id", userId)
			.put("is_bot", false)
			.put("first_name", "Owner" + userId);
	}

	/** Somebody whose chat program is set to a language says something. */
	JsonNode sayFrom(long chatId, String language, String text) {
		ObjectNode message = message(chatId).put("text", text);
		((ObjectNode) message.get("from")).put("language_code", language);
		return add("message", message);
	}

	private JsonNode add(String kind, JsonNode content) {
		long id = this.nextUpdate.getAndIncrement();
		ObjectNode update = this.mapper.createObjectNode().put("update_id", id);
		update.set(kind, content);
		this.updates.add(id, update);
		return update;
	}

}
