package measuredwalk.reading.load;

/** What a cue of the load list says. */
enum CueRole {

	/** A walk was harder in some way. */
	LOAD,
	/** It only sounds so, and hides what it covers. */
	GUARD,
	/** What follows was not done: 'we avoided the stairs'. */
	AVOIDED,
	/** The flat: there were no hills. */
	FLAT,
	/** It is still to come, or asked about. */
	LATER,
	/** It is no more than on other days. */
	USUAL

}
