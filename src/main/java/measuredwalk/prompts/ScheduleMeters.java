package measuredwalk.prompts;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.concurrent.TimeUnit;

import io.micrometer.core.instrument.MeterRegistry;
import io.micrometer.core.instrument.TimeGauge;
import io.micrometer.core.instrument.binder.MeterBinder;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** How far the schedule is behind. */
@Component
class ScheduleMeters implements MeterBinder {

	private final JdbcClient database;

	private final Clock clock;

	ScheduleMeters(JdbcClient database, Clock clock) {
		this.database = database;
		this.clock = clock;
	}

	@Override
	public void bindTo(MeterRegistry registry) {
		TimeGauge.builder("measuredwalk.schedule.lag", () -> lag().toMillis(), TimeUnit.MILLISECONDS)
			.description("For how long the first thing that is due has not been done")
			.register(registry);
	}

	/** Nothing that is due: no lag. */
	private Duration lag() {
		Instant now = this.clock.instant();
		return this.database.sql("""
				select execution_time from scheduled_tasks where picked = false and execution_time < ?
				order by execution_time fetch first row only""")
			.param(now.atOffset(ZoneOffset.UTC))
			.query((row, number) -> row.getObject(1, OffsetDateTime.class).toInstant())
			.optional()
			.map((due) -> Duration.between(due, now))
			.orElse(Duration.ZERO);
	}

}
