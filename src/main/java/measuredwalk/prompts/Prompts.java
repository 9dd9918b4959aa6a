package measuredwalk.prompts;

import java.time.Clock;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.locks.LockSupport;

import javax.sql.DataSource;

import com.github.kagkarlsson.scheduler.Scheduler;
import com.github.kagkarlsson.scheduler.task.Task;
import com.github.kagkarlsson.scheduler.task.helper.Tasks;
import measuredwalk.clock.TimedWork;
import measuredwalk.household.Dog;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.ObjectProvider;
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

	/** Long enough for the last words to go out. */
	private static final Duration UNTIL_FAREWELL = Duration.ofHours(1);

	private static final DayOfWeek DAY_OF_WEEKLY = DayOfWeek.SUNDAY;

	private static final String REMINDER = "reminder";

	private static final String FAREWELL = "farewell";

	private final List<Task<?>> tasks = new ArrayList<>();

	private final DataSource dataSource;

	private final Timetable timetable;

	private volatile @Nullable Scheduler scheduler;

	private final JdbcClient database;

	private final Clock clock;

	private final ObjectProvider<PromptHandler> handlers;

	Prompts(DataSource dataSource, JdbcClient database, Timetable timetable, Clock clock, PromptCall call,
			ObjectProvider<PromptHandler> handlers) {
		this.timetable = timetable;
		this.database = database;
		this.clock = clock;
		this.handlers = handlers;
		for (PromptKind kind : PromptKind.values()) {
			this.tasks.add(Tasks.oneTime(kind.taskName())
				.execute((instance, context) -> call.run(kind, instance.getId(), this)));
		}
		this.tasks.add(Tasks.oneTime(REMINDER).execute((instance, context) -> call.remind(instance.getId())));
		this.tasks.add(Tasks.oneTime(FAREWELL).execute((instance, context) -> call.farewell(instance.getId())));
		this.dataSource = new TransactionAwareDataSourceProxy(dataSource);
	}

	/**
	 * Sees to it that a dog's next morning check-in happens, and what is asked until the
	 * day after; to be called again when the hours change.
	 * @param dog the dog
	 */
	public void expect(Dog dog) {
		Instant now = this.clock.instant();
		LocalDate today = now.atZone(dog.household().timeZone()).toLocalDate();
		Occasion morning = Occasion.of(dog.id(), today);
		if (!PromptKind.MORNING.due(dog, morning).isAfter(now)) {
			morning = Occasion.of(dog.id(), today.plusDays(1));
		}
		schedule(PromptKind.MORNING, morning, PromptKind.MORNING.due(dog, morning));
		expectOn(dog, today);
		expectOn(dog, today.plusDays(1));
	}

	private void expectOn(Dog dog, LocalDate date) {
		if (date.getDayOfWeek() == DAY_OF_WEEKLY) {
			expect(PromptKind.WEEKLY, dog, Occasion.of(dog.id(), date));
			expect(PromptKind.FORTNIGHT, dog, Occasion.of(dog.id(), date));
		}
		this.handlers.getObject()
			.walkHours(dog)
			.forEach((hour) -> expect(PromptKind.AFTER_WALK, dog, new Occasion(dog.id(), date, hour, 0)));
	}

	private void expect(PromptKind kind, Dog dog, Occasion occasion) {
		Instant due = kind.due(dog, occasion);
		if (due.isAfter(this.clock.instant())) {
			schedule(kind, occasion, due);
		}
	}

	void schedule(PromptKind kind, Occasion occasion, Instant due) {
		if (!this.timetable.enter(kind.taskName(), occasion.name(), due)) {
			this.timetable.move(kind.taskName(), occasion.name(), due);
		}
	}

	/**
	 * Reminds of a check-in once.
	 * @param checkInId the check-in
	 * @param due when
	 */
	public void remind(UUID checkInId, Instant due) {
		this.timetable.enter(REMINDER, checkInId.toString(), due);
	}

	/**
	 * Reminds of a check-in at once instead of later, if a reminder was due.
	 * @param checkInId the check-in
	 */
	public void remindNow(UUID checkInId) {
		this.timetable.move(REMINDER, checkInId.toString(), this.clock.instant());
	}

	/**
	 * Sees to it that a chat without a dog is forgotten when its last words have gone
	 * out.
	 * @param chatId the chat
	 */
	public void farewell(long chatId) {
		this.timetable.enter(FAREWELL, Long.toString(chatId), this.clock.instant().plus(UNTIL_FAREWELL));
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
		Scheduler awake = this.scheduler;
		while (awake != null && this.scheduler != null && anyDue()) {
			awake.triggerCheckForDueExecutions();
			LockSupport.parkNanos(PAUSE_NANOS);
		}
	}

	private boolean anyDue() {
		return this.database.sql("select exists (select 1 from scheduled_tasks where execution_time <= ?)")
			.param(this.clock.instant().atOffset(ZoneOffset.UTC))
			.query(Boolean.class)
			.single();
	}

	/**
	 * A scheduler that was stopped cannot be started again, so each start has its own.
	 */
	@Override
	public void start() {
		Scheduler fresh = Scheduler.create(this.dataSource, this.tasks)
			.clock(this.clock::instant)
			.threads(1)
			.pollingInterval(POLLING)
			.build();
		fresh.start();
		this.scheduler = fresh;
	}

	@Override
	public void stop() {
		Scheduler awake = this.scheduler;
		this.scheduler = null;
		if (awake != null) {
			awake.stop();
		}
	}

	@Override
	public boolean isRunning() {
		return this.scheduler != null;
	}

}
