package measuredwalk.messaging;

/** Does what a message causes. */
public interface IncomingHandler {

	/**
	 * Handles one message inside the transaction that also marks it as handled, so that
	 * all that it causes happens once or not at all.
	 * @param message the message
	 */
	void handle(IncomingMessage message);

	/**
	 * Answers for a message that could not be handled, so that nobody waits in silence.
	 * @param message the message
	 */
	void apologise(IncomingMessage message);

}
