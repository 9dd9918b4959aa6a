package measuredwalk.escalation;

/** What a clinic can set for itself. */
public enum ClinicSetting {

	PHONE("measuredwalk.clinic.phone", "Phone in opening hours", "", "the clinic's own number",
			"Named in every emergency and same-day reply."),

	OUT_OF_HOURS_PHONE("measuredwalk.clinic.out-of-hours-phone", "Phone out of hours", "", "the clinic's own number",
			"Left empty, the same number counts at all times."),

	OPENING_HOURS("measuredwalk.clinic.opening-hours", "Opening hours", "Mon-Fri 08:30-18:00",
			"common practice, no source", "Reviews are told of, and same-day alerts repeated, only then."),

	TIME_ZONE("measuredwalk.clinic.time-zone", "Time zone of the clinic", "Europe/London", "ours",
			"The zone of the opening hours."),

	ALERT_MAIL("measuredwalk.clinic.alert-mail", "E-mail addresses for alerts", "", "the clinic's own addresses",
			"Split by commas, the first one is told first; the next ones when nobody acknowledges."),

	REVIEW_DESIGN("measuredwalk.clinic.review-design", "How keen reviews of a dog's course are", "balanced",
			"simulated dogs, docs/escalation.md", "Quieter, balanced or keener; see the table of what each costs.");

	private final String property;

	private final String shown;

	private final String fallback;

	private final String source;

	private final String meaning;

	ClinicSetting(String property, String shown, String fallback, String source, String meaning) {
		this.property = property;
		this.shown = shown;
		this.fallback = fallback;
		this.source = source;
		this.meaning = meaning;
	}

	/**
	 * The property that gives its default when the program starts.
	 * @return the property's name
	 */
	public String property() {
		return this.property;
	}

	/**
	 * Its name on the page.
	 * @return the name
	 */
	public String shown() {
		return this.shown;
	}

	/**
	 * What counts when neither the clinic nor the property says anything.
	 * @return the text, possibly empty
	 */
	public String fallback() {
		return this.fallback;
	}

	/**
	 * Where the default comes from.
	 * @return the source
	 */
	public String source() {
		return this.source;
	}

	/**
	 * What it does.
	 * @return a sentence
	 */
	public String meaning() {
		return this.meaning;
	}

}
