package measuredwalk.tolerance.simulation;

/**
 * What a piece of luck is about. Each topic of each day has its own stream, so that two
 * policies meet the same dog with the same luck although they ask for different walks.
 */
enum Topic {

	SEED, KIND, BODY, STORY, OWNER, PLAN, SILENCE, DAY, FLARE, OUTING, SIGN, TELLING, MORNING, POLICY

}
