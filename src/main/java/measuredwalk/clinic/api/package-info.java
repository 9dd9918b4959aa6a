/** The HTTP API for the clinic's own systems. */
@org.jspecify.annotations.NullMarked
package measuredwalk.clinic.api;
