package measuredwalk.tolerance.simulation;

import measuredwalk.tolerance.ToleranceEvent.DogEnrolled;

/** A way to choose walks. */
interface Policy {

	/**
	 * Its name in the table.
	 * @return a few words
	 */
	String name();

	/**
	 * Begins with a dog.
	 * @param dog what is known of it
	 * @param luck luck of the policy's own, for those that toss coins
	 * @return the course of its suggestions
	 */
	PolicyCourse enrol(DogEnrolled dog, Luck luck);

}
