package measuredwalk.prompts;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.concurrent.locks.LockSupport;

import javax.sql.DataSource;

import com.github.kagkarlsson.scheduler.Scheduler;
import com.github.kagkarlsson.scheduler.task.helper.OneTimeTask;
import com.github.kagkarlsson.scheduler.task.helper.Tasks;
import measuredwalk.clock.TimedWork;
import measuredwalk.household.Dog;
import org.springframework.context.SmartLifecycle;
import org.springframework.core.annotation.Order;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.datasource.TransactionAwareDataSourceProxy;
import org.springframework.stereotype.Service;

/**
 * What is due when. It lives in the application's database: what fell due while the
 * program was down runs when it is up again, and nothing is asked twice.
 */
@Service
@Order(10)
public class Prompts implements TimedWork, SmartLifecycle {

	private static final Duration POLLING = Duration.ofSeconds(1);

	private static final long PAUSE_NANOS = 5_000_000;

	private final OneTimeTask<Void> mornings;

	private final Scheduler scheduler;

	private final JdbcClient database;

	private final Clock clock;

	private volatile boolean running;

	Prompts(DataSource dataSource, JdbcClient database, Clock clock, MorningCall morningCall) {
		this.database = database;
		this.clock = clock;
		this.mornings = Tasks.oneTime("morning-check-in")
			.execute((instance, context) -> morningCall.run(instance, this));
		this.scheduler = Scheduler.create(new TransactionAwareDataSourceProxy(dataSource), this.mornings)
			.clock(clock::instant)
			.threads(1)
			.pollingInterval(POLLING)
			.build();
	}

	/**
	 * Sees to it that a dog's next morning check-in happens.
	 * @param dog the dog
	 */
	public void expectMorning(Dog dog) {
		LocalDate day = MorningCall.nextDay(dog.household(), this.clock.instant());
		this.scheduler.scheduleIfNotExists(this.mornings.instance(MorningCall.name(dog.id(), day)),
				MorningCall.time(dog.household(), day));
	}

	@Override
	public Optional<Instant> nextDue() {
		return this.database.sql("select min(execution_time) from scheduled_tasks where picked = false")
			.query((row, number) -> Optional.ofNullable(row.getObject(1, OffsetDateTime.class))
				.map(OffsetDateTime::toInstant))
			.single();
	}

	@Override
	public void catchUp() {
		while (this.running && anyDue()) {
			this.scheduler.triggerCheckForDueExecutions();
			LockSupport.parkNanos(PAUSE_NANOS);
		}
	}

	private boolean anyDue() {
		return this.database.sql("select exists (select 1 from scheduled_tasks where execution_time <= ?)")
			.param(this.clock.instant().atOffset(ZoneOffset.UTC))
			.query(Boolean.class)
			.single();
	}

	@Override
	public void start() {
		this.scheduler.start();
		this.running = true;
	}

	@Override
	public void stop() {
		this.running = false;
		this.scheduler.stop();
	}

	@Override
	public boolean isRunning() {
		return this.running;
	}

}
