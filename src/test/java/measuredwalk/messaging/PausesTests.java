package measuredwalk.messaging;

import java.time.Duration;
import java.util.concurrent.atomic.AtomicLong;

import measuredwalk.messaging.Delivery.Outcome;
import org.junit.jupiter.api.Test;

import static org.assertj.core.api.Assertions.assertThat;

class PausesTests {

	private static final Duration TEN = Duration.ofSeconds(10);

	private final AtomicLong now = new AtomicLong();

	private final Pauses pauses = new Pauses(this.now::get);

	@Test
	void leavesOnlyTheSlowedChatAlone() {
		this.pauses.after(chat(1), Outcome.SLOW_DOWN, TEN);
		assertThat(this.pauses.until(chat(1))).isEqualTo(TEN);
		assertThat(this.pauses.until(chat(2))).isZero();
		assertThat(this.pauses.pausedChats()).containsExactly(1L);
	}

	@Test
	void leavesTheWholeChannelAloneWhenASecondChatIsSlowedAtOnce() {
		this.pauses.after(chat(1), Outcome.SLOW_DOWN, TEN);
		this.pauses.after(chat(2), Outcome.SLOW_DOWN, TEN);
		assertThat(this.pauses.until(chat(3))).isEqualTo(TEN);
		assertThat(this.pauses.until(new Chat(4, "browser", "wren"))).isZero();
	}

	@Test
	void takesTwoSlowedChatsForTwoWhenTheChannelTookSomethingInBetween() {
		this.pauses.after(chat(1), Outcome.SLOW_DOWN, TEN);
		this.pauses.after(chat(3), Outcome.TAKEN, Duration.ZERO);
		this.pauses.after(chat(2), Outcome.SLOW_DOWN, TEN);
		assertThat(this.pauses.until(chat(3))).isZero();
	}

	@Test
	void endsWithTime() {
		this.pauses.after(chat(1), Outcome.TRY_LATER, TEN);
		this.now.addAndGet(TEN.toNanos());
		assertThat(this.pauses.until(chat(1))).isZero();
		assertThat(this.pauses.pausedChats()).isEmpty();
	}

	private static Chat chat(long id) {
		return new Chat(id, "telegram", String.valueOf(id));
	}

}
