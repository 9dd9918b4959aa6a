/**
 * The story: what a message, or a time that has come, causes. It ties the other rooms
 * together and shows nothing to any of them.
 */
@org.springframework.modulith.ApplicationModule(allowedDependencies = { "amounts", "messaging", "conversations",
		"reading", "reading :: quantity", "household", "journal", "tolerance", "suggestions", "prompts", "escalation",
		"pictures", "records", "signs", "speech" })
@org.jspecify.annotations.NullMarked
package measuredwalk.care;
