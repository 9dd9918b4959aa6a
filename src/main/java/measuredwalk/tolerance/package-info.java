/**
 * How much walking a dog tolerates, how sure we are of it, and today's suggestion. A pure
 * function of the plan and the journal: no framework, no clock, no database, no random
 * numbers.
 */
@org.springframework.modulith.ApplicationModule(allowedDependencies = "signs")
@org.jspecify.annotations.NullMarked
package measuredwalk.tolerance;
