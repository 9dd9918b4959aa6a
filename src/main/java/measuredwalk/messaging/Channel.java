package measuredwalk.messaging;

/** A way that messages travel to people. */
public interface Channel {

	/**
	 * The channel's name, as it stands with each chat in the database.
	 * @return the name, at most 20 characters
	 */
	String name();

	/**
	 * The longest text that fits into one message; longer ones are sent in parts.
	 * @return a number of UTF-16 code units, at least 2
	 */
	default int longestText() {
		return Integer.MAX_VALUE;
	}

	/**
	 * The longest text that may stand under a picture or a file; a longer one travels by
	 * itself.
	 * @return a number of UTF-16 code units, at least 400; or 0 when this channel is
	 * handed neither
	 */
	default int longestCaption() {
		return 0;
	}

	/**
	 * How quickly messages may follow each other.
	 * @return the channel's pace
	 */
	default Pace pace() {
		return Pace.UNLIMITED;
	}

	/**
	 * Hands a message to the channel. Called for one message of a chat at a time, in
	 * order, and for several chats side by side.
	 * @param parcel the message
	 * @return what became of it
	 */
	Delivery deliver(Parcel parcel);

}
