/**
 * Joins what is known of a dog with the tolerance model: the journal goes in, today's
 * suggestion comes out. Nothing is stored but the dosing rule that the clinic has set.
 */
@org.springframework.modulith.ApplicationModule(allowedDependencies = { "household", "journal", "tolerance", "signs" })
@org.jspecify.annotations.NullMarked
package measuredwalk.suggestions;
