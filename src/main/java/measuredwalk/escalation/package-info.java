/** What the clinic must hear of, how soon, and what became of it. */
@org.springframework.modulith.ApplicationModule(allowedDependencies = { "household", "signs", "journal", "messaging",
		"clock", "surveillance", "suggestions", "tolerance", "pictures", "speech" })
@org.jspecify.annotations.NullMarked
package measuredwalk.escalation;
