package measuredwalk.telegram;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.UUID;

/**
 * Many households of one dog and one carer, whose morning check-in is due at the same
 * time. Written straight into a database that has its tables already, with the clinic's
 * list as it is when the day has begun some hours ago.
 */
final class BurstHouseholds {

	static final int FIRST_CHAT = 50_000;

	private final int dogs;

	private final OffsetDateTime due;

	private final LocalDate today;

	BurstHouseholds(int dogs, Instant due) {
		this.dogs = dogs;
		this.due = due.atOffset(ZoneOffset.UTC);
		this.today = this.due.toLocalDate();
	}

	void write(LoadDatabase database) throws SQLException {
		try (Connection connection = database.open()) {
			connection.setAutoCommit(false);
			long firstRow = 1 + highestChat(connection);
			for (int number = 0; number < this.dogs; number++) {
				write(connection, number, firstRow + number);
			}
			connection.commit();
			try (Statement statement = connection.createStatement()) {
				statement.execute("alter table chat alter column id restart with " + (firstRow + this.dogs));
			}
			connection.commit();
		}
	}

	private static long highestChat(Connection connection) throws SQLException {
		try (Statement statement = connection.createStatement();
				ResultSet row = statement.executeQuery("select coalesce(max(id), 0) from chat")) {
			row.next();
			return row.getLong(1);
		}
	}

	private void write(Connection connection, int number, long chat) throws SQLException {
		UUID household = UUID.randomUUID();
		UUID dog = UUID.randomUUID();
		insert(connection, "insert into chat (id, channel, address, created_at) values (?, 'telegram', ?, ?)", chat,
				String.valueOf(FIRST_CHAT + number), this.due);
		insert(connection, "insert into chat_turn (chat_id) values (?)", chat);
		insert(connection, "insert into household (id, time_zone, morning_at, created_at) values (?, 'UTC', ?, ?)",
				household, this.due.toLocalTime(), this.due);
		insert(connection,
				"insert into dog (id, household_id, name, fully_grown, walk_times, enrolled_on, enrolled_at, version)"
						+ " values (?, ?, ?, true, '', ?, ?, 0)",
				dog, household, "Dog" + number, this.today, this.due);
		insert(connection,
				"insert into plan (dog_id, from_date, plan_minutes, walks_per_day, min_minutes, max_minutes, set_by,"
						+ " set_at) values (?, ?, 20, 2, 6, 45, 'load', ?)",
				dog, this.today, this.due);
		insert(connection,
				"insert into carer (id, household_id, chat_id, name, joined_at) values (?, ?, ?, 'Owner', ?)",
				UUID.randomUUID(), household, chat, this.due);
		insert(connection,
				"insert into dog_standing (dog_id, for_date, concern, reason, mornings_answered, mornings_expected)"
						+ " values (?, ?, 0, '', 0, 0)",
				dog, this.today);
		insert(connection, "insert into scheduled_tasks (task_name, task_instance, execution_time, picked, version)"
				+ " values ('morning-check-in', ?, ?, false, 1)", dog + ":" + this.today, this.due);
	}

	private static void insert(Connection connection, String sql, Object... values) throws SQLException {
		try (PreparedStatement insert = connection.prepareStatement(sql)) {
			for (int place = 0; place < values.length; place++) {
				insert.setObject(place + 1, values[place]);
			}
			insert.executeUpdate();
		}
	}

}
