package measuredwalk.telegram;

import measuredwalk.messaging.Arrival;

/** What an update means to us. */
sealed interface Incoming {

	/**
	 * Something was said.
	 *
	 * @param arrival the message for the inbox
	 */
	record Told(Arrival arrival) implements Incoming {
	}

	/**
	 * A button was pressed.
	 *
	 * @param callbackId by which the press is answered
	 * @param address the chat
	 * @param senderName who pressed
	 * @param data what the button carries
	 */
	record Pressed(String callbackId, String address, String senderName, String data) implements Incoming {
	}

	/**
	 * The bot may write to a chat again, or no more.
	 *
	 * @param address the chat
	 * @param gone true when it may not
	 */
	record Membership(String address, boolean gone) implements Incoming {
	}

	/**
	 * A group has become a supergroup and has another address from now on.
	 *
	 * @param from its address until now
	 * @param to its address from now on
	 */
	record Moved(String from, String to) implements Incoming {
	}

	/** Not for us. */
	record Nothing() implements Incoming {
	}

}
