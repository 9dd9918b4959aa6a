/**
 * The trade's vocabulary of what can be seen of a dog: signs, how bad, which leg, when.
 *
 * <p>
 * It knows nothing of any other module, so that reading, journal and tolerance speak of
 * the same things by the same names.
 */
@org.springframework.modulith.ApplicationModule(allowedDependencies = {})
@org.jspecify.annotations.NullMarked
package measuredwalk.signs;
