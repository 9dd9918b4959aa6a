/**
 * What was told of walks and mornings, with every correction and every taking back. It is
 * the only truth: all that is believed of a dog follows from it.
 */
@org.springframework.modulith.ApplicationModule(allowedDependencies = { "household", "signs" })
@org.jspecify.annotations.NullMarked
package measuredwalk.journal;
