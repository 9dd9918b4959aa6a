package measuredwalk.clinic.backup;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Optional;

import org.springframework.beans.factory.annotation.Value;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/**
 * Copies of the embedded database. PostgreSQL has tools of its own, which do it better.
 */
@Component
class Backups {

	private static final DateTimeFormatter NAME = DateTimeFormatter
		.ofPattern("'measured-walk-'uuuu-MM-dd'T'HHmmssSSS'.zip'")
		.withZone(ZoneOffset.UTC);

	private final JdbcClient database;

	private final Clock clock;

	private final Path folder;

	private final boolean embedded;

	Backups(JdbcClient database, Clock clock, @Value("${measuredwalk.backup-folder:data/backups}") Path folder,
			@Value("${spring.datasource.url}") String url) {
		this.database = database;
		this.clock = clock;
		this.folder = folder;
		this.embedded = url.startsWith("jdbc:h2:file:");
	}

	/**
	 * Writes a copy of all that is committed, without stopping anything.
	 * @return the file, a zip that holds the database's own file; empty on another
	 * database than an embedded one in a file
	 * @throws IOException when the folder cannot be made
	 */
	Optional<Path> take() throws IOException {
		if (!this.embedded) {
			return Optional.empty();
		}
		Files.createDirectories(this.folder);
		Path file = this.folder.resolve(NAME.format(this.clock.instant())).toAbsolutePath();
		this.database.sql("backup to '" + file.toString().replace("'", "''") + "'").update();
		return Optional.of(file);
	}

}
