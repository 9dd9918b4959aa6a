package measuredwalk.diary;

/** A diary that cannot be read at all; the message names the fix. */
public class DiaryProblem extends RuntimeException {

	private static final long serialVersionUID = 1L;

	DiaryProblem(String message) {
		super(message);
	}

}
