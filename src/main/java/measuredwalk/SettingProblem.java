package measuredwalk;

/** A setting is wrong; the message names it and the fix. */
class SettingProblem extends RuntimeException {

	SettingProblem(String message) {
		super(message);
	}

}
