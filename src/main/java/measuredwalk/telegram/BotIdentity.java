package measuredwalk.telegram;

/**
 * Who the bot is.
 *
 * @param id its user id
 * @param username its name without the at sign; blank while it is not known
 */
record BotIdentity(long id, String username) {
}
