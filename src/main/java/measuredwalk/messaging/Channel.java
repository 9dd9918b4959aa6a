package measuredwalk.messaging;

/** A way that messages travel to people. */
public interface Channel {

	/**
	 * The channel's name, as it stands with each chat in the database.
	 * @return the name, at most 20 characters
	 */
	String name();

	/**
	 * Hands a message to the channel. Called for one message of a chat at a time, in
	 * order.
	 * @param address the chat's address on this channel
	 * @param message the message
	 * @return what became of it
	 */
	Delivery deliver(String address, OutgoingMessage message);

}
