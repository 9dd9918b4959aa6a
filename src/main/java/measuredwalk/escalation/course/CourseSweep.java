package measuredwalk.escalation.course;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;

import measuredwalk.escalation.Sweep;
import measuredwalk.household.Dog;
import measuredwalk.household.Households;
import org.jspecify.annotations.Nullable;
import org.springframework.core.annotation.Order;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionTemplate;

/** Looks at every dog's course once a day, at noon: silence makes no event. */
@Component
@Order(23)
class CourseSweep implements Sweep {

	private static final LocalTime NOON = LocalTime.NOON;

	private final CourseWatch watch;

	private final Households households;

	private final JdbcClient database;

	private final TransactionTemplate transaction;

	private final Clock clock;

	private volatile @Nullable Instant last;

	CourseSweep(CourseWatch watch, Households households, JdbcClient database, TransactionTemplate transaction,
			Clock clock) {
		this.watch = watch;
		this.households = households;
		this.database = database;
		this.transaction = transaction;
		this.clock = clock;
	}

	/** Noon falls on the hour in most zones, and in the others a little later. */
	@Override
	public Optional<Instant> nextDue() {
		Instant before = this.last;
		return Optional
			.of((before == null) ? Instant.EPOCH : before.truncatedTo(ChronoUnit.HOURS).plus(1, ChronoUnit.HOURS));
	}

	@Override
	public synchronized void catchUp() {
		Instant now = this.clock.instant();
		if (nextDue().orElse(now).isAfter(now)) {
			return;
		}
		Map<UUID, LocalDate> swept = this.database.sql("select dog_id, swept_on from course_sweep")
			.query(Swept.class)
			.list()
			.stream()
			.collect(Collectors.toMap(Swept::dogId, Swept::sweptOn));
		this.households.dogs().forEach((dog) -> sweep(dog, swept.get(dog.id()), now));
		this.last = now;
	}

	private void sweep(Dog dog, @Nullable LocalDate sweptOn, Instant now) {
		ZonedDateTime local = now.atZone(dog.household().timeZone());
		LocalDate noonPassed = local.toLocalTime().isBefore(NOON) ? local.toLocalDate().minusDays(1)
				: local.toLocalDate();
		if (sweptOn == null || sweptOn.isBefore(noonPassed)) {
			this.transaction.executeWithoutResult((status) -> {
				this.watch.lookWithBeliefs(dog.id());
				mark(dog.id(), noonPassed);
			});
		}
	}

	private void mark(UUID dogId, LocalDate day) {
		int changed = this.database.sql("update course_sweep set swept_on = ? where dog_id = ?")
			.params(day, dogId)
			.update();
		if (changed == 0) {
			this.database.sql("insert into course_sweep (dog_id, swept_on) values (?, ?) on conflict do nothing")
				.params(dogId, day)
				.update();
		}
	}

	/** When a dog was swept last. */
	record Swept(UUID dogId, LocalDate sweptOn) {
	}

}
