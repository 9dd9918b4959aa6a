package measuredwalk.messaging;

import java.time.Duration;

/**
 * What became of a message that was handed to its channel.
 *
 * @param outcome what became of it
 * @param detail the channel's own name for a message that it took; otherwise what was
 * wrong, without the message's text
 * @param pause how long to leave this chat alone before trying again, in real time; zero
 * but for {@link Outcome#TRY_LATER} and {@link Outcome#SLOW_DOWN}
 */
public record Delivery(Outcome outcome, String detail, Duration pause) {

	/** What can become of a message. */
	public enum Outcome {

		/** The channel has taken it. */
		TAKEN,
		/** The channel is out of order and may have taken it or not. */
		TRY_LATER,
		/** The channel did not take it and says how long to wait. */
		SLOW_DOWN,
		/** Nothing more can be sent to this chat. */
		CHAT_GONE,
		/** This message can never be sent. */
		REFUSED

	}

	public static Delivery taken(String channelMessageId) {
		return new Delivery(Outcome.TAKEN, channelMessageId, Duration.ZERO);
	}

	/** The pause grows with each attempt. */
	public static Delivery tryLater(String why) {
		return new Delivery(Outcome.TRY_LATER, why, Duration.ZERO);
	}

	/** The channel itself said how long to wait. */
	public static Delivery slowDown(Duration wait, String why) {
		return new Delivery(Outcome.SLOW_DOWN, why, wait);
	}

	public static Delivery chatGone(String why) {
		return new Delivery(Outcome.CHAT_GONE, why, Duration.ZERO);
	}

	public static Delivery refused(String why) {
		return new Delivery(Outcome.REFUSED, why, Duration.ZERO);
	}

}
