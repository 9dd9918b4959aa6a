package measuredwalk.messaging;

import java.time.Duration;
import java.util.concurrent.locks.LockSupport;

import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Carries one message to its channel and brings back what became of it. */
final class Carrier {

	private static final Duration NOTE_AGAIN = Duration.ofMillis(500);

	private static final Duration AFTER_TROUBLE = Duration.ofSeconds(1);

	private static final Logger log = LoggerFactory.getLogger(Carrier.class);

	private final Dispatch dispatch;

	private volatile boolean hurried;

	Carrier(Dispatch dispatch) {
		this.dispatch = dispatch;
	}

	/** From now on nothing is waited for. */
	void hurry() {
		this.hurried = true;
	}

	Carried carry(WaitingMessage message) {
		try {
			if (!this.dispatch.wanted(message)) {
				return new Carried(message, Delivery.Outcome.REFUSED, Duration.ZERO);
			}
			Delivery delivery = this.dispatch.deliver(message);
			return new Carried(message, delivery.outcome(), noted(message, delivery));
		}
		catch (RuntimeException ex) {
			log.warn("Message {} could not be sent and waits.", message.id(), ex);
			return new Carried(message, Delivery.Outcome.TRY_LATER, AFTER_TROUBLE);
		}
	}

	/**
	 * What a channel has taken must be noted, or it would be sent again: a database that
	 * is away is asked until it is back.
	 */
	private Duration noted(WaitingMessage message, Delivery delivery) {
		while (true) {
			try {
				return this.dispatch.note(message, delivery);
			}
			catch (RuntimeException ex) {
				if (this.hurried) {
					throw ex;
				}
				log.warn("What became of message {} could not be noted; trying again.", message.id(), ex);
				LockSupport.parkNanos(NOTE_AGAIN.toNanos());
			}
		}
	}

	/**
	 * What became of a message.
	 *
	 * @param message the message
	 * @param outcome what became of it
	 * @param pause how long to leave its chat alone
	 */
	record Carried(WaitingMessage message, Delivery.Outcome outcome, Duration pause) {
	}

}
