package measuredwalk.signs;

/** How well founded a clinical rule is. */
public enum Grade {

	/** A trial in dogs. */
	A("dog trial"),
	/** A cohort or survey of dogs. */
	B("dog cohort or survey"),
	/** Expert opinion or common practice. */
	C("expert opinion or common practice"),
	/** Borrowed from people. */
	H("borrowed from people"),
	/** Chosen by simulation. */
	S("chosen by simulation");

	private final String shown;

	Grade(String shown) {
		this.shown = shown;
	}

	/**
	 * The grade in words.
	 * @return the words
	 */
	public String shown() {
		return this.shown;
	}

}
