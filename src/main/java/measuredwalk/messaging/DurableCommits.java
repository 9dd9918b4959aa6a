package measuredwalk.messaging;

import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;

import javax.sql.DataSource;

import org.springframework.context.SmartLifecycle;
import org.springframework.stereotype.Component;

/**
 * Makes the embedded database write each commit before it says that it is done. By itself
 * H2 keeps commits in memory for up to half a second, and what an update caused would be
 * gone after a crash although the update was confirmed. PostgreSQL needs no telling.
 */
@Component
class DurableCommits implements SmartLifecycle {

	private final DataSource dataSource;

	private volatile boolean running;

	DurableCommits(DataSource dataSource) {
		this.dataSource = dataSource;
	}

	@Override
	public void start() {
		try (Connection connection = this.dataSource.getConnection();
				Statement statement = connection.createStatement()) {
			if (connection.getMetaData().getDatabaseProductName().equals("H2")) {
				statement.execute("set write_delay 0");
			}
			this.running = true;
		}
		catch (SQLException ex) {
			throw new IllegalStateException("The database could not be told to keep every commit.", ex);
		}
	}

	@Override
	public void stop() {
		this.running = false;
	}

	@Override
	public boolean isRunning() {
		return this.running;
	}

	/** Before anything else that runs by itself. */
	@Override
	public int getPhase() {
		return Integer.MIN_VALUE;
	}

}
