package measuredwalk.messaging;

/**
 * Something other than words that came with a message. It is kept, not looked at.
 *
 * @param kind what it is
 * @param reference the channel's own name by which it can be fetched, at most 400
 * characters; blank when there is nothing to fetch
 */
public record Attachment(Kind kind, String reference) {

	/** What an attachment is. */
	public enum Kind {

		/** Something spoken or played. */
		VOICE,
		/** A still picture. */
		PHOTO,
		/** A moving picture. */
		VIDEO,
		/** A file of any other kind. */
		DOCUMENT,
		/** A drawn picture that stands for a mood. */
		STICKER,
		/** A place, a card, a poll and the like. */
		OTHER

	}

}
