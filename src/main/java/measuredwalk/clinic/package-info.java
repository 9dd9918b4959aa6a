/** The clinic's side: staff accounts, pages and the HTTP API for its own systems. */
@org.springframework.modulith.ApplicationModule(allowedDependencies = { "household", "journal", "reading",
		"suggestions", "tolerance", "conversations", "speech", "escalation", "diary", "files", "records", "messaging",
		"telegram", "pictures", "prompts", "signs", "clock" })
@org.jspecify.annotations.NullMarked
package measuredwalk.clinic;
