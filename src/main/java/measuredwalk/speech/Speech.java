package measuredwalk.speech;

import java.util.Locale;

/**
 * How a household is spoken to.
 *
 * @param tag the language and its words, such as {@code en-GB}, {@code en-US} or
 * {@code es}, as {@code conversations/languages.yaml} names them
 * @param units in what distances are told
 * @param vet whether those who treat the dog are called the vet, and not the clinic
 */
public record Speech(String tag, Units units, boolean vet) {

	private static final Speech USUAL = new Speech("en-GB", Units.KILOMETRES, false);

	/**
	 * How people are spoken to who chose nothing.
	 * @return English with British words, and kilometres
	 */
	public static Speech usual() {
		return USUAL;
	}

	/**
	 * The language that messages are read in.
	 * @return two letters
	 */
	public String language() {
		return locale().getLanguage();
	}

	/**
	 * What days, months and figures are written by.
	 * @return the locale
	 */
	public Locale locale() {
		return Locale.forLanguageTag(this.tag);
	}

	/**
	 * The same with another language and its units.
	 * @param other the language's tag
	 * @param usualUnits the units that go with it
	 * @return the changed speech
	 */
	public Speech inLanguage(String other, Units usualUnits) {
		return new Speech(other, usualUnits, this.vet);
	}

	/**
	 * The same with other units.
	 * @param other the units
	 * @return the changed speech
	 */
	public Speech withUnits(Units other) {
		return new Speech(this.tag, other, this.vet);
	}

	/**
	 * The same with another word for those who treat the dog.
	 * @param saysVet whether they are called the vet
	 * @return the changed speech
	 */
	public Speech saying(boolean saysVet) {
		return new Speech(this.tag, this.units, saysVet);
	}

}
