package measuredwalk.tolerance.filter;

/**
 * Mass of one kind that turns into another, weighed on the way.
 *
 * @param from kind before
 * @param to kind after, which may be the same
 * @param likelihood factor for each grid point, only looked at where there is mass
 * @param factor factor for all points
 */
@SuppressWarnings("ArrayRecordComponent")
public record KindMove(int from, int to, double[] likelihood, double factor) {
}
