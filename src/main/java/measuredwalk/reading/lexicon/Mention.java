package measuredwalk.reading.lexicon;

/**
 * A phrase found in a message.
 *
 * @param entry what it means
 * @param from index of its first word
 * @param to index after its last word
 */
public record Mention(Entry entry, int from, int to) {

	/**
	 * What kind of thing it tells.
	 * @return the category
	 */
	public Category category() {
		return this.entry.category();
	}

	/**
	 * Which one.
	 * @return the value, such as {@code stiffness}
	 */
	public String value() {
		return this.entry.value();
	}

	/**
	 * How many words it covers.
	 * @return at least 1
	 */
	public int length() {
		return this.to - this.from;
	}

	/**
	 * Whether it shares a word with another.
	 * @param other the other
	 * @return true when they overlap
	 */
	public boolean overlaps(Mention other) {
		return this.from < other.to && other.from < this.to;
	}

}
