package measuredwalk.prompts;

import java.time.Clock;
import java.time.Duration;
import java.util.UUID;

import measuredwalk.household.Dog;
import measuredwalk.household.Households;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionTemplate;

/** A time to ask that has come; each morning sees to the occasions that follow it. */
@Component
class PromptCall {

	/** So long a question that waits gets before another may be asked. */
	private static final Duration PUT_OFF = Duration.ofMinutes(30);

	private static final Logger log = LoggerFactory.getLogger(PromptCall.class);

	private final Households households;

	private final ObjectProvider<PromptHandler> handlers;

	private final TransactionTemplate transaction;

	private final Welcome welcome;

	private final Clock clock;

	PromptCall(Households households, ObjectProvider<PromptHandler> handlers, TransactionTemplate transaction,
			Welcome welcome, Clock clock) {
		this.households = households;
		this.handlers = handlers;
		this.transaction = transaction;
		this.welcome = welcome;
		this.clock = clock;
	}

	void run(PromptKind kind, String name, Prompts prompts) {
		Occasion occasion = Occasion.named(name);
		this.transaction.executeWithoutResult((status) -> this.households.dog(occasion.dogId()).ifPresent((dog) -> {
			if (!this.welcome.is(kind, dog, occasion)) {
				log.debug("The {} {} is left out: it is too late for it, or not wanted.", kind.taskName(), name);
			}
			else if (ask(kind, dog, occasion) == Outcome.NOT_NOW) {
				prompts.schedule(kind, occasion.later(), this.clock.instant().plus(PUT_OFF));
			}
			if (kind == PromptKind.MORNING) {
				prompts.expect(dog);
			}
		}));
	}

	private Outcome ask(PromptKind kind, Dog dog, Occasion occasion) {
		PromptHandler handler = this.handlers.getObject();
		return switch (kind) {
			case MORNING -> handler.morning(dog, occasion.date());
			case WEEKLY -> handler.weekly(dog, occasion.date());
			case FORTNIGHT -> handler.fortnight(dog, occasion.date());
			case AFTER_WALK -> handler.walkHours(dog).contains(occasion.walkHour())
					? handler.afterWalk(dog, occasion.date(), occasion.walkHour()) : Outcome.SETTLED;
		};
	}

	void farewell(String name) {
		this.transaction.executeWithoutResult((status) -> this.handlers.getObject().farewell(Long.parseLong(name)));
	}

	void remind(String name) {
		this.transaction.executeWithoutResult((status) -> this.handlers.getObject().remind(UUID.fromString(name)));
	}

}
