package measuredwalk.clinic.caseload;

/** How much a dog's course asks for a look, from the least to the most. */
public enum Concern {

	STEADY("steady"), WATCH("keep an eye on"), LOOK_FIRST("look at first");

	private final String shown;

	Concern(String shown) {
		this.shown = shown;
	}

	/**
	 * The concern in words.
	 * @return lower-case words
	 */
	public String shown() {
		return this.shown;
	}

}
