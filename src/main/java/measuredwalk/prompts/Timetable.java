package measuredwalk.prompts;

import java.time.Instant;
import java.time.ZoneOffset;

import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/**
 * Writes what is due when into db-scheduler's table. Its own client first looks and then
 * inserts; when another instance comes in between, PostgreSQL breaks off the whole
 * transaction, and with it what an owner told. Here the second one does nothing.
 */
@Component
class Timetable {

	private final JdbcClient database;

	Timetable(JdbcClient database) {
		this.database = database;
	}

	/**
	 * Enters what is not entered yet.
	 * @return true when it is new
	 */
	boolean enter(String task, String instance, Instant due) {
		return this.database.sql("""
				insert into scheduled_tasks (task_name, task_instance, execution_time, picked, version)
				values (?, ?, ?, false, 1) on conflict do nothing""")
			.params(task, instance, due.atOffset(ZoneOffset.UTC))
			.update() > 0;
	}

	/** Gives what is entered and has not begun another time; does nothing otherwise. */
	void move(String task, String instance, Instant due) {
		this.database.sql("""
				update scheduled_tasks set execution_time = ?, version = version + 1
				where task_name = ? and task_instance = ? and picked = false and execution_time <> ?""")
			.params(due.atOffset(ZoneOffset.UTC), task, instance, due.atOffset(ZoneOffset.UTC))
			.update();
	}

}
