/**
 * How a household is spoken to: in which language, with which words and units. Who is
 * spoken to just now is bound to the thread, as it is for one message or prompt at a
 * time.
 */
@org.springframework.modulith.ApplicationModule(allowedDependencies = {})
@org.jspecify.annotations.NullMarked
package measuredwalk.speech;
