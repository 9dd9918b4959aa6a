package measuredwalk.telegram;

import java.util.List;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;

import static org.assertj.core.api.Assertions.assertThat;

class SendingGateTests {

	private static final double PER_SECOND = 500;

	@Test
	void letsABunchThroughOneByOneNeverQuickerThanTheLimit() throws InterruptedException {
		SendingGate gate = new SendingGate(PER_SECOND);
		ConcurrentLinkedQueue<Long> passed = new ConcurrentLinkedQueue<>();
		long begun = System.nanoTime();
		List<Thread> bunch = IntStream.range(0, 20).mapToObj((number) -> new Thread(() -> {
			gate.pass();
			passed.add(System.nanoTime());
		})).toList();
		bunch.forEach(Thread::start);
		for (Thread each : bunch) {
			each.join();
		}
		long last = passed.stream().mapToLong(Long::longValue).max().orElseThrow();
		assertThat(passed).hasSize(20);
		assertThat((last - begun) / 1e9).isGreaterThanOrEqualTo(19 / PER_SECOND);
	}

}
