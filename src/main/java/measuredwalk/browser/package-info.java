/**
 * The rehearsal chat in a browser: a channel like any other, with an invented household
 * that has joined already.
 */
@org.springframework.modulith.ApplicationModule(allowedDependencies = { "messaging", "household", "files", "clock" })
@org.jspecify.annotations.NullMarked
package measuredwalk.browser;
