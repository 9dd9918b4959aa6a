package measuredwalk.telegram;

import java.util.Optional;

import measuredwalk.messaging.Attachment;
import measuredwalk.messaging.Attachment.Kind;
import org.telegram.telegrambots.meta.api.objects.message.Message;

/** Finds what came with a message, or instead of words. */
final class Attachments {

	private Attachments() {
	}

	static Optional<Attachment> of(Message message) {
		return spoken(message).or(() -> seen(message)).or(() -> other(message));
	}

	private static Optional<Attachment> spoken(Message message) {
		if (message.getVoice() != null) {
			return attachment(Kind.VOICE, message.getVoice().getFileId());
		}
		return (message.getAudio() != null) ? attachment(Kind.VOICE, message.getAudio().getFileId()) : Optional.empty();
	}

	private static Optional<Attachment> seen(Message message) {
		if (message.getPhoto() != null && !message.getPhoto().isEmpty()) {
			// The same picture comes in several sizes, the largest one last.
			return attachment(Kind.PHOTO, message.getPhoto().get(message.getPhoto().size() - 1).getFileId());
		}
		if (message.getVideo() != null) {
			return attachment(Kind.VIDEO, message.getVideo().getFileId());
		}
		if (message.getVideoNote() != null) {
			return attachment(Kind.VIDEO, message.getVideoNote().getFileId());
		}
		return (message.getAnimation() != null) ? attachment(Kind.VIDEO, message.getAnimation().getFileId())
				: Optional.empty();
	}

	private static Optional<Attachment> other(Message message) {
		if (message.getDocument() != null) {
			return attachment(Kind.DOCUMENT, message.getDocument().getFileId());
		}
		if (message.getSticker() != null) {
			return attachment(Kind.STICKER, message.getSticker().getFileId());
		}
		boolean any = message.getLocation() != null || message.getContact() != null || message.getPoll() != null
				|| message.getDice() != null || message.getVenue() != null;
		return any ? attachment(Kind.OTHER, "") : Optional.empty();
	}

	private static Optional<Attachment> attachment(Kind kind, String fileId) {
		return Optional.of(new Attachment(kind, (fileId != null) ? fileId : ""));
	}

}
