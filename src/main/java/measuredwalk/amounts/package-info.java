/**
 * How much a walk was, from what was told of it: in the chat or in a paper diary.
 */
@org.springframework.modulith.ApplicationModule(allowedDependencies = { "household", "journal", "reading" })
@org.jspecify.annotations.NullMarked
package measuredwalk.amounts;
