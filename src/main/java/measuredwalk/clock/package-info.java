/**
 * The one clock of the whole application, and the rehearsal that moves it forward.
 */
@org.springframework.modulith.ApplicationModule(allowedDependencies = {})
@org.jspecify.annotations.NullMarked
package measuredwalk.clock;
