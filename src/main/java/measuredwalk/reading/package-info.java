/**
 * Turns what a person types on a phone into structured facts, says what it is unsure of,
 * and never invents. Pure Java: no framework, no clock, no database.
 */
@org.springframework.modulith.ApplicationModule(allowedDependencies = "signs")
@org.jspecify.annotations.NullMarked
package measuredwalk.reading;
