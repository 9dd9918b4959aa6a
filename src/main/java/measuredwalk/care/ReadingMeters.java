package measuredwalk.care;

import io.micrometer.core.instrument.Counter;
import io.micrometer.core.instrument.MeterRegistry;
import org.springframework.stereotype.Component;

/**
 * Counts how owners' words are read, never the words themselves. A message whose handling
 * failed and is repeated counts each time.
 */
@Component
class ReadingMeters {

	private static final String ASK_BACKS = "measuredwalk.reading.ask.backs";

	private final Counter read;

	private final Counter missed;

	private final Counter amounts;

	private final Counter dogs;

	ReadingMeters(MeterRegistry registry) {
		this.read = Counter.builder("measuredwalk.reading.messages")
			.description("Messages about a dog that were read")
			.register(registry);
		this.missed = Counter.builder("measuredwalk.reading.misses")
			.description("Messages in which nothing was understood")
			.register(registry);
		this.amounts = askBack(registry, "amount");
		this.dogs = askBack(registry, "dog");
	}

	private static Counter askBack(MeterRegistry registry, String about) {
		return Counter.builder(ASK_BACKS)
			.tag("about", about)
			.description("Questions of what was meant")
			.register(registry);
	}

	void read() {
		this.read.increment();
	}

	void missed() {
		this.missed.increment();
	}

	void askedBackAmount() {
		this.amounts.increment();
	}

	void askedBackDog() {
		this.dogs.increment();
	}

}
