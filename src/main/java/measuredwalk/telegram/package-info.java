/**
 * Telegram as a channel: the only room that knows the Bot API. Without a token in the
 * settings nothing of it runs.
 */
@org.springframework.modulith.ApplicationModule(allowedDependencies = { "messaging", "clock" })
@org.jspecify.annotations.NullMarked
package measuredwalk.telegram;
