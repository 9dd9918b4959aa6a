/**
 * Paper diaries from before the chat: read line by line, looked at before anything is
 * stored, then written into the journal.
 */
@org.springframework.modulith.ApplicationModule(
		allowedDependencies = { "amounts", "household", "journal", "reading", "signs", "speech" })
@org.jspecify.annotations.NullMarked
package measuredwalk.diary;
