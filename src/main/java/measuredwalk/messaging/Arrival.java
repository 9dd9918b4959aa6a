package measuredwalk.messaging;

import java.time.Instant;

import org.jspecify.annotations.Nullable;

/**
 * A message as a channel hands it to the inbox.
 *
 * @param address the chat's address on the channel
 * @param key the channel's own name for the message; a second one of the same name is
 * ignored
 * @param senderName what the channel calls the person
 * @param text what it says; blank when only an attachment came
 * @param attachment what else came with it, or null
 * @param sentAt when it was sent, on the application's clock
 * @param language the language that the sender's program is set to, where the channel
 * tells it, or null
 */
public record Arrival(String address, String key, String senderName, String text, @Nullable Attachment attachment,
		Instant sentAt, @Nullable String language) {

	/**
	 * A message whose sender's language is not told.
	 * @param address the chat's address on the channel
	 * @param key the channel's own name for the message
	 * @param senderName what the channel calls the person
	 * @param text what it says
	 * @param attachment what else came with it, or null
	 * @param sentAt when it was sent
	 */
	public Arrival(String address, String key, String senderName, String text, @Nullable Attachment attachment,
			Instant sentAt) {
		this(address, key, senderName, text, attachment, sentAt, null);
	}

}
