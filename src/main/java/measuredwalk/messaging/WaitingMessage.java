package measuredwalk.messaging;

/**
 * The message of a chat that is to be sent next.
 *
 * @param id its number in the outbox
 * @param chat the chat that it goes to
 * @param message what it says
 * @param partsSent how many parts of it have gone out, when it is too long for one
 * message
 * @param attempts how often sending it has been tried
 * @param answer whether somebody waits for it
 */
record WaitingMessage(long id, Chat chat, OutgoingMessage message, int partsSent, int attempts, boolean answer) {
}
