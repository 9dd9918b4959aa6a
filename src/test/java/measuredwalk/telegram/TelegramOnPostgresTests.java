package measuredwalk.telegram;

import java.io.IOException;
import java.io.UncheckedIOException;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import org.springframework.test.annotation.DirtiesContext;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;

/** The context ends before the database does. */
@DirtiesContext
class TelegramOnPostgresTests extends TelegramStory {

	private static final EmbeddedPostgres postgres = started();

	@DynamicPropertySource
	static void database(DynamicPropertyRegistry registry) {
		registry.add("spring.datasource.url", () -> postgres.getJdbcUrl("postgres", "postgres"));
		registry.add("spring.datasource.username", () -> "postgres");
		registry.add("spring.datasource.password", () -> "postgres");
	}

	private static EmbeddedPostgres started() {
		try {
			return EmbeddedPostgres.start();
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

}
