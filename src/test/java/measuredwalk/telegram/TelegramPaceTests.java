package measuredwalk.telegram;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicLong;

import org.junit.jupiter.api.Test;

import static org.assertj.core.api.Assertions.assertThat;

/** The limits are those of the Bot API's public FAQ. */
class TelegramPaceTests {

	private static final long SECOND = Duration.ofSeconds(1).toNanos();

	private final AtomicLong now = new AtomicLong(-5 * SECOND);

	private final TelegramPace pace = new TelegramPace(
			new TelegramSettings("1:t", "", "", "", 30, Duration.ofSeconds(1), 20, 2000, Duration.ofSeconds(25)),
			this.now::get);

	@Test
	void sendsThirtyASecondToAllChatsTogether() {
		List<Long> sentAt = sendTo(300, false);
		double seconds = (sentAt.get(299) - sentAt.get(0)) / (double) SECOND;
		assertThat(299 / seconds).isBetween(28.5, 31.5);
	}

	@Test
	void neverSendsMoreThanThirtyOneInAnySecondEvenWhenEachIsLate() {
		List<Long> sentAt = new ArrayList<>();
		for (int chat = 0; chat < 300; chat++) {
			this.now.addAndGet(this.pace.untilFree("c" + chat).toNanos() + chat % 7 * SECOND / 300);
			this.pace.sending("c" + chat);
			sentAt.add(this.now.get());
		}
		for (long start : sentAt) {
			assertThat(sentAt.stream().filter((at) -> at >= start && at - start < SECOND)).hasSizeLessThanOrEqualTo(31);
		}
	}

	@Test
	void sendsOneASecondToOneChat() {
		this.pace.sending("7");
		assertThat(this.pace.untilFree("7")).isEqualTo(Duration.ofSeconds(1));
		this.now.addAndGet(SECOND);
		assertThat(this.pace.untilFree("7")).isZero();
	}

	@Test
	void letsOtherChatsGoFirstWhileOneHasToWait() {
		this.pace.sending("7");
		assertThat(this.pace.untilFree("8")).isLessThan(Duration.ofMillis(40));
	}

	@Test
	void sendsTwentyAMinuteToOneGroup() {
		List<Long> sentAt = sendTo(21, true);
		assertThat(sentAt.get(19) - sentAt.get(0)).isEqualTo(19 * SECOND);
		assertThat(sentAt.get(20) - sentAt.get(0)).isEqualTo(60 * SECOND);
	}

	private List<Long> sendTo(int messages, boolean oneGroup) {
		List<Long> sentAt = new ArrayList<>();
		for (int number = 0; number < messages; number++) {
			String address = oneGroup ? "-100" : "c" + number;
			this.now.addAndGet(this.pace.untilFree(address).toNanos());
			this.pace.sending(address);
			sentAt.add(this.now.get());
		}
		return sentAt;
	}

}
