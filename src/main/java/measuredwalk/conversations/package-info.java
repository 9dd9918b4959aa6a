/**
 * Scripted conversations: what is asked, in what words, and how far each running one has
 * come. The scripts are files, so that a practitioner can change the words.
 */
@org.springframework.modulith.ApplicationModule(allowedDependencies = { "reading", "signs", "speech" })
@org.jspecify.annotations.NullMarked
package measuredwalk.conversations;
