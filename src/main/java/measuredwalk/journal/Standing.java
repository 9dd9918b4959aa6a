package measuredwalk.journal;

import measuredwalk.signs.Coded;

/** Whether a version of an entry counts. */
public enum Standing implements Coded {

	/** It counts. */
	COUNTS,
	/** A later version of the same entry counts in its place. */
	REPLACED,
	/** It was taken back. */
	UNDONE

}
