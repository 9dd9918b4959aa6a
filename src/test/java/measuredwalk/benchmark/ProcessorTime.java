package measuredwalk.benchmark;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;

import org.openjdk.jmh.annotations.AuxCounters;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/**
 * Counts operations and the thread's own processor time, so that a figure means something
 * on a crowded machine too: operations in a second of processor time are the one by the
 * other.
 */
@State(Scope.Thread)
@AuxCounters(AuxCounters.Type.EVENTS)
public class ProcessorTime {

	private final ThreadMXBean threads = ManagementFactory.getThreadMXBean();

	/** How many operations were counted. */
	public long operations;

	private long startNanos;

	@Setup(Level.Iteration)
	public void start() {
		this.operations = 0;
		this.startNanos = this.threads.getCurrentThreadCpuTime();
	}

	/** Counts one operation. */
	public void operation() {
		this.operations++;
	}

	/**
	 * The processor time since the start of the iteration.
	 * @return in milliseconds
	 */
	public long processorMillis() {
		return (this.threads.getCurrentThreadCpuTime() - this.startNanos) / 1_000_000;
	}

}
