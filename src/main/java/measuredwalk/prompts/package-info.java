/** What is due when, for whom, in the household's own zone. */
@org.springframework.modulith.ApplicationModule(allowedDependencies = { "clock", "household" })
@org.jspecify.annotations.NullMarked
package measuredwalk.prompts;
