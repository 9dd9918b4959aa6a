package measuredwalk.reading;

/** A bare yes or no. */
public enum Answer {

	YES, NO, UNSURE

}
