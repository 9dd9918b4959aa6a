package measuredwalk.clinic.backup;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Clock;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

import org.springframework.beans.factory.annotation.Value;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Isolation;
import org.springframework.transaction.annotation.Transactional;

/** Copies of the whole database, which either kind of database can be filled from. */
@Component
class Backups {

	private static final DateTimeFormatter NAME = DateTimeFormatter
		.ofPattern("'measured-walk-'uuuu-MM-dd'T'HHmmssSSS'.zip'")
		.withZone(ZoneOffset.UTC);

	private static final String OWNER_ONLY = "rw-------";

	/** Rows are fetched by so many, so that memory does not grow with the database. */
	private static final int ROWS_AT_ONCE = 500;

	private final JdbcTemplate rows;

	private final JdbcClient database;

	private final Clock clock;

	private final Path folder;

	Backups(JdbcTemplate jdbc, Clock clock, @Value("${measuredwalk.backup-folder:data/backups}") Path folder) {
		this.rows = new JdbcTemplate(jdbc.getDataSource());
		this.rows.setFetchSize(ROWS_AT_ONCE);
		this.database = JdbcClient.create(jdbc);
		this.clock = clock;
		this.folder = folder;
	}

	/**
	 * Writes a copy of all that is committed at its beginning, without stopping anything.
	 * @return the file, which only the program's own user may read
	 * @throws IOException when it cannot be written
	 */
	@Transactional(isolation = Isolation.REPEATABLE_READ, readOnly = true)
	Path take() throws IOException {
		Files.createDirectories(this.folder);
		Path file = this.folder.resolve(NAME.format(this.clock.instant())).toAbsolutePath();
		Path unfinished = Files.createTempFile(this.folder, "unfinished", ".zip");
		if (unfinished.getFileSystem().supportedFileAttributeViews().contains("posix")) {
			Files.setPosixFilePermissions(unfinished, PosixFilePermissions.fromString(OWNER_ONLY));
		}
		try (OutputStream out = Files.newOutputStream(unfinished); ZipOutputStream zip = new ZipOutputStream(out)) {
			write(new BackupTables(this.database).all(), zip);
		}
		catch (UncheckedIOException ex) {
			throw ex.getCause();
		}
		return Files.move(unfinished, file);
	}

	private void write(List<BackupTable> tables, ZipOutputStream zip) throws IOException {
		zip.putNextEntry(new ZipEntry(BackupFile.CONTENTS));
		line(zip, new BackupFile.Contents(schemaVersion(), this.clock.instant(),
				tables.stream().map(BackupTable::name).toList()));
		for (BackupTable table : tables) {
			zip.putNextEntry(new ZipEntry(table.name() + BackupFile.ROWS));
			line(zip, table.columnNames());
			this.rows.query(table.select(), (row) -> {
				Object[] values = new Object[table.columns().size()];
				for (int at = 0; at < values.length; at++) {
					values[at] = table.columns().get(at).bytes() ? row.getBytes(at + 1) : row.getString(at + 1);
				}
				line(zip, values);
			});
		}
	}

	private String schemaVersion() {
		return this.database.sql("""
				select version from flyway_schema_history where version is not null
				order by installed_rank desc fetch first row only""").query(String.class).single();
	}

	private static void line(ZipOutputStream zip, Object content) {
		try {
			zip.write((BackupFile.JSON.writeValueAsString(content) + "\n").getBytes(StandardCharsets.UTF_8));
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

}
