package measuredwalk.escalation;

import java.util.List;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;

import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.context.SmartLifecycle;
import org.springframework.stereotype.Component;

/** Makes all sweeps every few seconds, one after the other. */
@Component
class Rounds implements SmartLifecycle {

	private static final long PAUSE_SECONDS = 3;

	private static final long LONGEST_STOP_SECONDS = 10;

	private static final Logger log = LoggerFactory.getLogger(Rounds.class);

	private final List<Sweep> sweeps;

	private volatile @Nullable ScheduledExecutorService rounds;

	Rounds(List<Sweep> sweeps) {
		this.sweeps = sweeps;
	}

	private void round() {
		for (Sweep sweep : this.sweeps) {
			try {
				sweep.catchUp();
			}
			catch (RuntimeException ex) {
				log.warn("A sweep failed; the next round makes it again.", ex);
			}
		}
	}

	@Override
	public void start() {
		ScheduledExecutorService executor = Executors.newSingleThreadScheduledExecutor((task) -> {
			Thread thread = new Thread(task, "rounds");
			thread.setDaemon(true);
			return thread;
		});
		var unused = executor.scheduleWithFixedDelay(this::round, PAUSE_SECONDS, PAUSE_SECONDS, TimeUnit.SECONDS);
		this.rounds = executor;
	}

	@Override
	public void stop() {
		ScheduledExecutorService executor = this.rounds;
		this.rounds = null;
		if (executor != null) {
			executor.shutdown();
			awaitLastRound(executor);
		}
	}

	private static void awaitLastRound(ScheduledExecutorService executor) {
		try {
			if (!executor.awaitTermination(LONGEST_STOP_SECONDS, TimeUnit.SECONDS)) {
				executor.shutdownNow();
			}
		}
		catch (InterruptedException ex) {
			executor.shutdownNow();
			Thread.currentThread().interrupt();
		}
	}

	@Override
	public boolean isRunning() {
		return this.rounds != null;
	}

}
