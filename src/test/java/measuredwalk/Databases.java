package measuredwalk;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.UUID;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import org.springframework.test.context.DynamicPropertyRegistry;

/** The two databases that everything is tested on: H2, and a real PostgreSQL. */
public final class Databases {

	private static final String H2_MODE = ";MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH";

	private Databases() {
	}

	public static void h2(DynamicPropertyRegistry registry) {
		String url = "jdbc:h2:mem:" + UUID.randomUUID() + ";DB_CLOSE_DELAY=-1" + H2_MODE;
		registry.add("spring.datasource.url", () -> url);
	}

	/** Each call gives a database of its own on one server. */
	public static void postgres(DynamicPropertyRegistry registry) {
		String name = "d" + UUID.randomUUID().toString().replace("-", "");
		Server.create(name);
		registry.add("spring.datasource.url", () -> Server.SERVER.getJdbcUrl("postgres", name));
		registry.add("spring.datasource.username", () -> "postgres");
		registry.add("spring.datasource.password", () -> "postgres");
	}

	private static final class Server {

		private static final EmbeddedPostgres SERVER = start();

		private static EmbeddedPostgres start() {
			try {
				return EmbeddedPostgres.builder().start();
			}
			catch (IOException ex) {
				throw new UncheckedIOException(ex);
			}
		}

		private static void create(String name) {
			try (var connection = SERVER.getPostgresDatabase().getConnection();
					var statement = connection.createStatement()) {
				statement.execute("create database " + name);
			}
			catch (java.sql.SQLException ex) {
				throw new IllegalStateException(ex);
			}
		}

	}

}
