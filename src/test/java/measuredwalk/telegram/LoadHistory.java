package measuredwalk.telegram;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.UUID;

/**
 * Gives every dog a journal of days gone by: two walks and a morning a day, signs on a
 * tenth of them.
 */
final class LoadHistory {

	private static final String SIGN = "[{\"kind\":\"STIFFNESS\",\"present\":true,\"severity\":\"MILD\"}]";

	private final int days;

	LoadHistory(int days) {
		this.days = days;
	}

	void write(LoadDatabase database) throws SQLException {
		try (Connection connection = database.open()) {
			connection.setAutoCommit(false);
			fill(connection);
			connection.commit();
		}
	}

	private void fill(Connection connection) throws SQLException {
		try (PreparedStatement dogs = connection
			.prepareStatement("select d.id, c.id from dog d join carer c on c.household_id = d.household_id");
				PreparedStatement back = connection.prepareStatement("update dog set enrolled_on = ?");
				PreparedStatement walk = connection.prepareStatement(
						"""
								insert into walk_entry (entry_id, version, standing, dog_id, walk_date, start_time, minutes,
								minutes_low, minutes_high, minutes_estimated, signs, unsure, said, reported_by, reported_by_name,
								reported_at, written_at) values (?, 1, 'COUNTS', ?, ?, ?, 20, 20, 20, false, ?, '', '[]', ?, 'Owner',
								?, ?)""");
				PreparedStatement morning = connection.prepareStatement(
						"""
								insert into morning_entry (entry_id, version, standing, dog_id, morning_date, signs, unsure, said,
								reported_by, reported_by_name, reported_at, written_at)
								values (?, 1, 'COUNTS', ?, ?, ?, '', '[]', ?, 'Owner', ?, ?)""")) {
			LocalDate today = LocalDate.now(ZoneOffset.UTC);
			back.setObject(1, today.minusDays(this.days));
			back.executeUpdate();
			var rows = dogs.executeQuery();
			while (rows.next()) {
				UUID dog = rows.getObject(1, UUID.class);
				UUID carer = rows.getObject(2, UUID.class);
				for (int day = this.days; day > 0; day--) {
					add(walk, dog, carer, today.minusDays(day), 8, day % 10 == 0);
					add(walk, dog, carer, today.minusDays(day), 17, day % 10 == 5);
					add(morning, dog, carer, today.minusDays(day), 7, day % 10 == 4);
				}
				walk.executeBatch();
				morning.executeBatch();
			}
		}
	}

	private static void add(PreparedStatement insert, UUID dog, UUID carer, LocalDate date, int hour, boolean sign)
			throws SQLException {
		int place = 1;
		OffsetDateTime at = date.atTime(hour, 0).atOffset(ZoneOffset.UTC);
		insert.setObject(place++, UUID.randomUUID());
		insert.setObject(place++, dog);
		insert.setObject(place++, date);
		if (hour != 7) {
			insert.setObject(place++, at.toLocalTime());
		}
		insert.setString(place++, sign ? SIGN : "[]");
		insert.setObject(place++, carer);
		insert.setObject(place++, at);
		insert.setObject(place, at);
		insert.addBatch();
	}

}
