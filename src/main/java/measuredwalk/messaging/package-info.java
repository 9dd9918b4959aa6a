/**
 * Messages in and out, whatever channel they travel on. Nothing that came in is lost, and
 * nothing goes out before what caused it is committed.
 */
@org.springframework.modulith.ApplicationModule(allowedDependencies = "clock")
@org.jspecify.annotations.NullMarked
package measuredwalk.messaging;
