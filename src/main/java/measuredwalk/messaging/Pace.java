package measuredwalk.messaging;

import java.time.Duration;

/**
 * How quickly a channel may be used, in real time, not on the rehearsal clock. Asked by
 * one thread only.
 */
public interface Pace {

	/** No limit. */
	Pace UNLIMITED = new Pace() {

		@Override
		public Duration untilFree(String address) {
			return Duration.ZERO;
		}

		@Override
		public void sending(String address) {
			// Nothing is counted.
		}

	};

	/**
	 * How long to wait before a message may go to an address.
	 * @param address the chat's address on the channel
	 * @return the time to wait; zero when it may go now
	 */
	Duration untilFree(String address);

	/**
	 * Counts a message that goes out now.
	 * @param address the chat's address on the channel
	 */
	void sending(String address);

}
