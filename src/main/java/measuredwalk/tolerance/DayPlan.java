package measuredwalk.tolerance;

import measuredwalk.tolerance.filter.GridLaw;
import measuredwalk.tolerance.filter.PointMasses;
import org.jspecify.annotations.Nullable;

/**
 * The belief and the decision of a day before its first walk.
 *
 * @param belief this morning's belief
 * @param today the law of the log of today's tolerance
 * @param widening standard deviation of log tolerance that doubt adds to what the belief
 * says of today
 * @param usual the dog's usual mornings, this one among them
 * @param morning how this morning was, or null when not told
 * @param situation what the clinical limits saw
 * @param decision what was decided
 */
record DayPlan(PointMasses belief, GridLaw today, double widening, UsualMornings usual, @Nullable MorningGrade morning,
		Situation situation, Decision decision) {
}
