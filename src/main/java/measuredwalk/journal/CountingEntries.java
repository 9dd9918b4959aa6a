package measuredwalk.journal;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.UUID;

import measuredwalk.signs.Overall;
import org.jspecify.annotations.Nullable;

import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/**
 * Reads what counts of a dog's whole journal, row by row: every message needs it, and a
 * year of it as entities, each watched for changes, takes several times as long. What
 * this transaction has changed must be flushed before.
 */
@Component
class CountingEntries {

	private final JdbcClient database;

	CountingEntries(JdbcClient database) {
		this.database = database;
	}

	List<WalkEntry> walks(UUID dogId) {
		return this.database.sql("""
				select entry_id, version, walk_date, start_time, minutes, minutes_low, minutes_high, distance_metres,
				minutes_estimated, overall, signs, unsure, loads, said, reported_by, reported_by_name, reported_at,
				written_at from walk_entry where dog_id = ? and standing = 'COUNTS' order by walk_date, id""")
			.param(dogId)
			.query((row, number) -> walk(dogId, row))
			.list();
	}

	List<MorningEntry> mornings(UUID dogId) {
		return this.database.sql("""
				select entry_id, version, morning_date, stiff_minutes, overall, signs, unsure, said, reported_by,
				reported_by_name, reported_at, written_at
				from morning_entry where dog_id = ? and standing = 'COUNTS' order by morning_date, id""")
			.param(dogId)
			.query((row, number) -> morning(dogId, row))
			.list();
	}

	private static WalkEntry walk(UUID dogId, ResultSet row) throws SQLException {
		WalkFacts facts = new WalkFacts(row.getObject("walk_date", LocalDate.class),
				row.getObject("start_time", LocalTime.class), figure(row, "minutes"), figure(row, "minutes_low"),
				figure(row, "minutes_high"), figure(row, "distance_metres"), row.getBoolean("minutes_estimated"),
				overall(row), JournalColumns.signs(row.getString("signs")),
				JournalColumns.paths(row.getString("unsure")), JournalColumns.loads(row.getString("loads")));
		return new WalkEntry(row.getObject("entry_id", UUID.class), row.getInt("version"), Standing.COUNTS, dogId,
				facts, JournalColumns.said(row.getString("said")), teller(row), instant(row, "reported_at"),
				instant(row, "written_at"), null, null);
	}

	private static MorningEntry morning(UUID dogId, ResultSet row) throws SQLException {
		MorningFacts facts = new MorningFacts(row.getObject("morning_date", LocalDate.class),
				figure(row, "stiff_minutes"), overall(row), JournalColumns.signs(row.getString("signs")),
				JournalColumns.paths(row.getString("unsure")));
		return new MorningEntry(row.getObject("entry_id", UUID.class), row.getInt("version"), Standing.COUNTS, dogId,
				facts, JournalColumns.said(row.getString("said")), teller(row), instant(row, "reported_at"),
				instant(row, "written_at"), null, null);
	}

	private static Teller teller(ResultSet row) throws SQLException {
		return new Teller(row.getObject("reported_by", UUID.class), row.getString("reported_by_name"));
	}

	private static @Nullable Overall overall(ResultSet row) throws SQLException {
		String name = row.getString("overall");
		return (name != null) ? Overall.valueOf(name) : null;
	}

	private static @Nullable Double figure(ResultSet row, String column) throws SQLException {
		double figure = row.getDouble(column);
		return row.wasNull() ? null : figure;
	}

	private static Instant instant(ResultSet row, String column) throws SQLException {
		return row.getObject(column, OffsetDateTime.class).toInstant();
	}

}
