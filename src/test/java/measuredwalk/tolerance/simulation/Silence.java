package measuredwalk.tolerance.simulation;

/** Decides which check-ins are not answered. */
interface Silence {

	boolean missed(Luck answerLuck, int day, boolean trouble);

}
