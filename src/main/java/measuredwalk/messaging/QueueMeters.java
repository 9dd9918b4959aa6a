package measuredwalk.messaging;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import java.util.function.ToDoubleFunction;

import io.micrometer.core.instrument.FunctionCounter;
import io.micrometer.core.instrument.Gauge;
import io.micrometer.core.instrument.MeterRegistry;
import io.micrometer.core.instrument.TimeGauge;
import io.micrometer.core.instrument.binder.MeterBinder;
import org.springframework.stereotype.Component;

/** How deep the two queues are and how long the first in each has waited. */
@Component
class QueueMeters implements MeterBinder {

	private final InboxQueue inbox;

	private final OutboxQueue outbox;

	private final Clock clock;

	QueueMeters(InboxQueue inbox, OutboxQueue outbox, Clock clock) {
		this.inbox = inbox;
		this.outbox = outbox;
		this.clock = clock;
	}

	@Override
	public void bindTo(MeterRegistry registry) {
		count(registry, "inbox", "waiting", () -> this.inbox.count("waiting"));
		count(registry, "inbox", "failed", () -> this.inbox.count("failed"));
		count(registry, "outbox", "waiting", () -> this.outbox.count("waiting"));
		count(registry, "outbox", "dead", () -> this.outbox.count("dead"));
		ever(registry, "inbox", this.inbox, InboxQueue::everStored);
		ever(registry, "outbox", this.outbox, OutboxQueue::everWritten);
		wait(registry, "inbox", this.inbox::waitingSince);
		wait(registry, "outbox", this.outbox::waitingSince);
	}

	private static void count(MeterRegistry registry, String queue, String state, Supplier<Number> messages) {
		Gauge.builder("measuredwalk." + queue + ".messages", messages)
			.tag("state", state)
			.description("Messages held in the " + queue)
			.register(registry);
	}

	/**
	 * By the numbers that the database gave: the messages themselves are too many to be
	 * counted at every look.
	 */
	private static <Q> void ever(MeterRegistry registry, String queue, Q rows, ToDoubleFunction<Q> messages) {
		FunctionCounter.builder("measuredwalk." + queue + ".messages.ever", rows, messages)
			.description("Messages that were put into the " + queue + " since the database was made")
			.register(registry);
	}

	private void wait(MeterRegistry registry, String queue, Supplier<Optional<Instant>> since) {
		TimeGauge
			.builder("measuredwalk." + queue + ".longest.wait",
					() -> since.get()
						.map((instant) -> Duration.between(instant, this.clock.instant()).toMillis())
						.orElse(0L),
					TimeUnit.MILLISECONDS)
			.description("How long the first message has waited in the " + queue)
			.register(registry);
	}

}
