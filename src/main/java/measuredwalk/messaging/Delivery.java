package measuredwalk.messaging;

import java.time.Duration;

/**
 * What became of a message that was handed to its channel.
 *
 * @param outcome what became of it
 * @param detail the channel's own name for a message that it took; otherwise what was
 * wrong, without the message's text
 * @param pause how long to wait before trying again, in real time; zero but for
 * {@link Outcome#TRY_LATER}
 */
public record Delivery(Outcome outcome, String detail, Duration pause) {

	/** What can become of a message. */
	public enum Outcome {

		/** The channel has taken it. */
		TAKEN,
		/** The channel asks to try again after some time. */
		TRY_LATER,
		/** Nothing more can be sent to this chat. */
		CHAT_GONE,
		/** This message can never be sent. */
		REFUSED

	}

	public static Delivery taken(String channelMessageId) {
		return new Delivery(Outcome.TAKEN, channelMessageId, Duration.ZERO);
	}

	public static Delivery tryLater(Duration wait, String why) {
		return new Delivery(Outcome.TRY_LATER, why, wait);
	}

	public static Delivery chatGone(String why) {
		return new Delivery(Outcome.CHAT_GONE, why, Duration.ZERO);
	}

	public static Delivery refused(String why) {
		return new Delivery(Outcome.REFUSED, why, Duration.ZERO);
	}

}
