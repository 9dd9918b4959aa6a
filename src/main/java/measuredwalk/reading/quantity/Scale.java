package measuredwalk.reading.quantity;

/** A scale of temperature. */
public enum Scale {

	/** Degrees Celsius. */
	CELSIUS("C"),
	/** Degrees Fahrenheit. */
	FAHRENHEIT("F"),
	/** Kelvin. */
	KELVIN("K");

	private final String letter;

	Scale(String letter) {
		this.letter = letter;
	}

	/**
	 * The letter that it is written with.
	 * @return the letter
	 */
	public String letter() {
		return this.letter;
	}

}
