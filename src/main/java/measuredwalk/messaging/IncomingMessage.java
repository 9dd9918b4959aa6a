package measuredwalk.messaging;

import java.time.Instant;

import org.jspecify.annotations.Nullable;

/**
 * A message that came in and is stored.
 *
 * @param id its number in the inbox
 * @param chatId the chat that it came from
 * @param senderName what the channel calls the person
 * @param text what it says; blank when only an attachment came
 * @param receivedAt when it came in
 * @param attachment what else came with it, or null
 */
public record IncomingMessage(long id, long chatId, String senderName, String text, Instant receivedAt,
		@Nullable Attachment attachment) {

	/**
	 * Whether it brings something that cannot be read, and no words.
	 * @return true when there is an attachment and the text is blank
	 */
	public boolean wordless() {
		return this.attachment != null && this.text.isBlank();
	}

	/**
	 * Whether something spoken came with it.
	 * @return true when there is a voice message or other sound
	 */
	public boolean spoken() {
		return this.attachment != null && this.attachment.kind() == Attachment.Kind.VOICE;
	}

}
