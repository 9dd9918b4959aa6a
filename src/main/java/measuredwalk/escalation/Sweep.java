package measuredwalk.escalation;

import measuredwalk.clock.TimedWork;

/**
 * Timed work that looks again and again at what is due. What is due is written in the
 * database, so a sweep that was missed is made up for by the next one.
 */
public interface Sweep extends TimedWork {

}
