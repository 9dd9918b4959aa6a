package measuredwalk.clinic.backup;

/** A backup cannot be restored; the message says why and what to do. */
final class RestoreProblem extends RuntimeException {

	RestoreProblem(String message) {
		super(message);
	}

}
