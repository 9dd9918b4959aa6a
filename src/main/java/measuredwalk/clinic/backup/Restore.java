package measuredwalk.clinic.backup;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

import javax.sql.DataSource;

import org.flywaydb.core.Flyway;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.support.JdbcTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;
import tools.jackson.databind.JsonNode;

/**
 * Fills an empty database from a backup: makes the tables as they were, fills them in one
 * transaction, and brings them up to date.
 */
final class Restore {

	private static final int ROWS_AT_ONCE = 500;

	private final DataSource dataSource;

	private final JdbcTemplate rows;

	private final JdbcClient database;

	Restore(DataSource dataSource) {
		this.dataSource = dataSource;
		this.rows = new JdbcTemplate(dataSource);
		this.database = JdbcClient.create(this.rows);
	}

	/**
	 * Restores a backup.
	 * @param file the backup
	 * @return how many rows it held
	 * @throws IOException when the file cannot be read
	 * @throws RestoreProblem when it is no backup, or the database is not empty
	 */
	long from(Path file) throws IOException {
		try (ZipFile zip = new ZipFile(file.toFile())) {
			BackupFile.Contents contents = contents(zip);
			refuseUnlessEmpty();
			migrate(contents.schemaVersion());
			Long rows = new TransactionTemplate(new JdbcTransactionManager(this.dataSource))
				.execute((transaction) -> fill(zip, contents.tables()));
			migrate("latest");
			return (rows != null) ? rows : 0;
		}
	}

	private static BackupFile.Contents contents(ZipFile zip) throws IOException {
		ZipEntry entry = zip.getEntry(BackupFile.CONTENTS);
		if (entry == null) {
			throw new RestoreProblem("It is no backup of this program: it has no " + BackupFile.CONTENTS + ".");
		}
		return BackupFile.JSON.readValue(zip.getInputStream(entry), BackupFile.Contents.class);
	}

	private void refuseUnlessEmpty() {
		long tables = this.database
			.sql("select count(*) from information_schema.tables where table_schema ="
					+ " current_schema and table_type = 'BASE TABLE'")
			.query(Long.class)
			.single();
		if (tables > 0) {
			throw new RestoreProblem("The database of spring.datasource.url is not empty. Name an empty one:"
					+ " nothing is ever written over.");
		}
	}

	private void migrate(String version) {
		Flyway.configure().dataSource(this.dataSource).target(version).load().migrate();
	}

	private long fill(ZipFile zip, List<String> names) {
		Map<String, BackupTable> tables = new BackupTables(this.database).all()
			.stream()
			.collect(Collectors.toMap(BackupTable::name, Function.identity()));
		long rows = 0;
		for (String name : names) {
			BackupTable table = tables.get(name);
			if (table == null) {
				throw new RestoreProblem("It has the table '" + name + "', which this version of the program does not"
						+ " know. Take the version that made it, or a newer one.");
			}
			rows += fill(zip, table);
		}
		return rows;
	}

	private long fill(ZipFile zip, BackupTable table) {
		// A migration may have put rows in, which the backup has as well.
		this.database.sql("delete from " + table.name()).update();
		ZipEntry entry = zip.getEntry(table.name() + BackupFile.ROWS);
		if (entry == null) {
			throw new RestoreProblem("It is not whole: the table '" + table.name() + "' is missing.");
		}
		try (BufferedReader lines = new BufferedReader(
				new InputStreamReader(zip.getInputStream(entry), StandardCharsets.UTF_8))) {
			long rows = insert(table.inOrderOf(names(lines.readLine())), lines);
			numberOn(table);
			return rows;
		}
		catch (IOException ex) {
			throw new RestoreProblem("The table '" + table.name() + "' cannot be read from it: " + ex.getMessage());
		}
	}

	private static List<String> names(String line) {
		List<String> names = new ArrayList<>();
		BackupFile.JSON.readTree(line).forEach((name) -> names.add(name.asString()));
		return names;
	}

	private long insert(BackupTable table, BufferedReader lines) throws IOException {
		long rows = 0;
		List<Object[]> batch = new ArrayList<>();
		for (String line = lines.readLine(); line != null; line = lines.readLine()) {
			batch.add(values(table, BackupFile.JSON.readTree(line)));
			rows++;
			if (batch.size() == ROWS_AT_ONCE) {
				this.rows.batchUpdate(table.insert(), batch);
				batch.clear();
			}
		}
		this.rows.batchUpdate(table.insert(), batch);
		return rows;
	}

	private static Object[] values(BackupTable table, JsonNode line) {
		Object[] values = new Object[table.columns().size()];
		for (int at = 0; at < values.length; at++) {
			JsonNode value = line.get(at);
			if (!value.isNull()) {
				values[at] = table.columns().get(at).bytes() ? value.binaryValue() : value.asString();
			}
		}
		return values;
	}

	/** New rows are numbered behind those that came back. */
	private void numberOn(BackupTable table) {
		for (BackupTable.Column column : table.columns()) {
			if (column.identity()) {
				long next = 1 + this.database.sql("select coalesce(max(" + column.name() + "), 0) from " + table.name())
					.query(Long.class)
					.single();
				this.database
					.sql("alter table " + table.name() + " alter column " + column.name() + " restart with " + next)
					.update();
			}
		}
	}

}
