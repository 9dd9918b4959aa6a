package measuredwalk.clinic.caseload;

import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;

import measuredwalk.clinic.audit.Audits;
import measuredwalk.escalation.Sweep;
import measuredwalk.household.Dog;
import measuredwalk.household.Households;
import measuredwalk.journal.MorningLogged;
import measuredwalk.journal.WalkLogged;
import measuredwalk.suggestions.DosingRuleChanged;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import org.springframework.transaction.event.TransactionalEventListener;

/** Looks at a dog when something was told of it, and at all whose day has begun. */
@Component
@Order(40)
class CaseloadSweep implements Sweep {

	private static final Logger log = LoggerFactory.getLogger(CaseloadSweep.class);

	private final Caseload caseload;

	private final Audits audits;

	private final Households households;

	private final Clock clock;

	private volatile @Nullable Instant last;

	private volatile boolean outdated;

	CaseloadSweep(Caseload caseload, Audits audits, Households households, Clock clock) {
		this.caseload = caseload;
		this.audits = audits;
		this.households = households;
		this.clock = clock;
	}

	@TransactionalEventListener(fallbackExecution = true)
	void walk(WalkLogged logged) {
		this.caseload.news(logged.dogId());
	}

	@TransactionalEventListener(fallbackExecution = true)
	void morning(MorningLogged logged) {
		this.caseload.news(logged.dogId());
	}

	@TransactionalEventListener(fallbackExecution = true)
	void rule(DosingRuleChanged changed) {
		this.caseload.outdate();
		this.outdated = true;
	}

	/** Days begin on the hour, or at worst at a half or a quarter of it. */
	@Override
	public Optional<Instant> nextDue() {
		Instant before = this.last;
		return Optional.of((before == null || this.outdated) ? Instant.EPOCH
				: before.truncatedTo(ChronoUnit.HOURS).plus(1, ChronoUnit.HOURS));
	}

	@Override
	public synchronized void catchUp() {
		this.caseload.lookAtNews();
		Instant now = this.clock.instant();
		if (nextDue().orElse(now).isAfter(now)) {
			return;
		}
		this.outdated = false;
		Map<UUID, DogStanding> known = this.caseload.all()
			.stream()
			.collect(Collectors.toMap(DogStanding::dogId, (each) -> each));
		this.households.dogs().stream().filter((dog) -> behind(dog, known.get(dog.id()), now)).forEach(this::dayBegins);
		this.last = now;
	}

	private void dayBegins(Dog dog) {
		this.caseload.lookAtIfPossible(dog.id());
		try {
			this.audits.count(dog);
		}
		catch (RuntimeException ex) {
			log.warn("Dog {} could not be counted for the audit; it will be when its next day begins.", dog.id(), ex);
		}
	}

	private static boolean behind(Dog dog, @Nullable DogStanding standing, Instant now) {
		return standing == null || standing.date().isBefore(now.atZone(dog.household().timeZone()).toLocalDate());
	}

}
