package measuredwalk.prompts;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.UUID;

import com.github.kagkarlsson.scheduler.task.TaskInstance;
import measuredwalk.household.Dog;
import measuredwalk.household.Household;
import measuredwalk.household.Households;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionTemplate;

/** The morning check-in of one dog on one day; each call sees to the next day's. */
@Component
class MorningCall {

	/** Asked later than this after its hour, it would be of no use: it is left out. */
	private static final Duration TOO_LATE_AFTER = Duration.ofHours(4);

	private static final Logger log = LoggerFactory.getLogger(MorningCall.class);

	private final Households households;

	private final ObjectProvider<PromptHandler> handlers;

	private final TransactionTemplate transaction;

	private final Clock clock;

	MorningCall(Households households, ObjectProvider<PromptHandler> handlers, TransactionTemplate transaction,
			Clock clock) {
		this.households = households;
		this.handlers = handlers;
		this.transaction = transaction;
		this.clock = clock;
	}

	/** The name of a call: a dog's morning is called once, whatever asks for it. */
	static String name(UUID dogId, LocalDate date) {
		return dogId + ":" + date;
	}

	static Instant time(Household household, LocalDate date) {
		return ZonedDateTime.of(date, household.morningAt(), household.timeZone()).toInstant();
	}

	/** The next day whose morning hour is still to come. */
	static LocalDate nextDay(Household household, Instant now) {
		LocalDate today = now.atZone(household.timeZone()).toLocalDate();
		return time(household, today).isAfter(now) ? today : today.plusDays(1);
	}

	void run(TaskInstance<Void> instance, Prompts prompts) {
		String name = instance.getId();
		int middle = name.lastIndexOf(':');
		UUID dogId = UUID.fromString(name.substring(0, middle));
		LocalDate date = LocalDate.parse(name.substring(middle + 1));
		this.transaction.executeWithoutResult((status) -> this.households.dog(dogId).ifPresent((dog) -> {
			if (inTime(dog, date)) {
				this.handlers.getObject().morning(dogId, date);
			}
			else {
				log.info("The morning check-in {} is left out: its hour is long past.", name);
			}
			prompts.expectMorning(dog);
		}));
	}

	private boolean inTime(Dog dog, LocalDate date) {
		Instant latest = time(dog.household(), date).plus(TOO_LATE_AFTER);
		return !this.clock.instant().isAfter(latest);
	}

}
