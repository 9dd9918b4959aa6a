package measuredwalk.telegram;

import java.io.Closeable;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;

/**
 * A database for a load run, with the settings by which the application finds it.
 *
 * @param name what it is called in the report
 * @param url its JDBC address
 * @param username who logs in
 * @param password that one's password
 * @param server what is to be closed at the end
 */
record LoadDatabase(String name, String url, String username, String password,
		Closeable server) implements AutoCloseable {

	/** A database in a file, or a server that ends with this process. */
	static LoadDatabase named(String name, Path folder) {
		return switch (name.toLowerCase(Locale.ROOT)) {
			case "h2" -> new LoadDatabase("H2 in a file", "jdbc:h2:file:" + folder.resolve("load")
					+ ";MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH;DB_CLOSE_ON_EXIT=FALSE", "sa",
					"", () -> {
					});
			case "postgres" -> postgres();
			default ->
				throw new IllegalArgumentException("load.database is '" + name + "'; it must be h2 or postgres.");
		};
	}

	/**
	 * With the server's usual care, so that each commit is on the disk before it is said.
	 * {@code load.server} may name more settings of the server: name=value, with commas
	 * between.
	 */
	private static LoadDatabase postgres() {
		EmbeddedPostgres.Builder builder = EmbeddedPostgres.builder().setServerConfig("synchronous_commit", "on");
		for (String setting : System.getProperty("load.server", "fsync=on").split(",")) {
			builder.setServerConfig(setting.split("=")[0], setting.split("=")[1]);
		}
		try {
			EmbeddedPostgres server = builder.start();
			return new LoadDatabase("PostgreSQL 18", server.getJdbcUrl("postgres", "postgres"), "postgres", "postgres",
					server);
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

	@Override
	public void close() throws IOException {
		this.server.close();
	}

	List<String> settings() {
		return List.of("--spring.datasource.url=" + this.url, "--spring.datasource.username=" + this.username,
				"--spring.datasource.password=" + this.password);
	}

	Connection open() throws SQLException {
		return DriverManager.getConnection(this.url, this.username, this.password);
	}

	/**
	 * The processor time of the server so far, zero when the database runs inside the
	 * application. Its processes belong to the one that this connection's belongs to.
	 */
	Duration serverTime() throws SQLException {
		if (!this.url.contains("postgresql")) {
			return Duration.ZERO;
		}
		try (Connection connection = open();
				Statement statement = connection.createStatement();
				ResultSet row = statement.executeQuery("select pg_backend_pid()")) {
			row.next();
			ProcessHandle server = ProcessHandle.of(row.getLong(1)).flatMap(ProcessHandle::parent).orElseThrow();
			return Stream.concat(Stream.of(server), server.descendants())
				.map((process) -> process.info().totalCpuDuration().orElse(Duration.ZERO))
				.reduce(Duration.ZERO, Duration::plus);
		}
	}

}
