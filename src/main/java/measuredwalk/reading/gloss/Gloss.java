package measuredwalk.reading.gloss;

/**
 * A message in the English of the rules.
 *
 * @param text the English words, the writer's marks, figures and names among them
 * @param known how many words the glossary knows
 * @param unknown how many it does not; these are left out
 */
public record Gloss(String text, int known, int unknown) {

	/**
	 * Whether the message is in the glossary's language, as far as its words tell.
	 * @return true when most of its words are known
	 */
	public boolean isUnderstood() {
		return this.known > this.unknown || this.unknown == 0;
	}

}
