package measuredwalk.messaging;

import java.net.InetAddress;
import java.net.UnknownHostException;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;

import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.context.SmartLifecycle;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Keeps this instance's leases alive. It starts first and stops last. */
@Component
public class Leases implements SmartLifecycle {

	private static final long RENEWED_EVERY_SECONDS = 3;

	private final JdbcClient database;

	private final String holder;

	private final Map<String, Lease> leases = new ConcurrentHashMap<>();

	private volatile @Nullable ScheduledExecutorService renewals;

	Leases(JdbcClient database, @Value("${measuredwalk.instance:}") String instance,
			@Value("${server.port:8080}") int port) {
		this.database = database;
		this.holder = instance.isBlank() ? ownName(port) : instance;
	}

	/**
	 * A process that was killed and started again at the same place has the same name and
	 * need not wait for its own lease. Two processes never listen on one port.
	 */
	private static String ownName(int port) {
		try {
			return InetAddress.getLocalHost().getHostName() + ":" + ((port > 0) ? port : UUID.randomUUID());
		}
		catch (UnknownHostException ex) {
			return UUID.randomUUID().toString();
		}
	}

	/**
	 * The lease on some work; from now on this instance asks for it.
	 * @param work the work's name, at most 60 characters
	 * @return the lease
	 */
	public Lease of(String work) {
		return this.leases.computeIfAbsent(work, (name) -> new Lease(this.database, name, this.holder));
	}

	@Override
	public void start() {
		renew();
		ScheduledExecutorService executor = Executors.newSingleThreadScheduledExecutor((task) -> {
			Thread thread = new Thread(task, "leases");
			thread.setDaemon(true);
			return thread;
		});
		var unused = executor.scheduleWithFixedDelay(this::renew, RENEWED_EVERY_SECONDS, RENEWED_EVERY_SECONDS,
				TimeUnit.SECONDS);
		this.renewals = executor;
	}

	private void renew() {
		this.leases.values().forEach(Lease::renew);
	}

	@Override
	public void stop() {
		ScheduledExecutorService executor = this.renewals;
		this.renewals = null;
		if (executor != null) {
			executor.shutdown();
			this.leases.values().forEach(Lease::giveUp);
		}
	}

	@Override
	public boolean isRunning() {
		return this.renewals != null;
	}

	@Override
	public int getPhase() {
		return 0;
	}

}
