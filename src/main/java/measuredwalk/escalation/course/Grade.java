package measuredwalk.escalation.course;

/** How well founded a rule is. */
public enum Grade {

	/** A trial in dogs. */
	A,
	/** A cohort or survey of dogs. */
	B,
	/** Expert opinion or common practice. */
	C,
	/** Borrowed from people. */
	H

}
