/** The jar's tools, which need no server and no database: read and replay. */
@org.springframework.modulith.ApplicationModule(
		allowedDependencies = { "reading", "reading :: quantity", "reading :: context", "tolerance", "signs" })
@org.jspecify.annotations.NullMarked
package measuredwalk.command;
