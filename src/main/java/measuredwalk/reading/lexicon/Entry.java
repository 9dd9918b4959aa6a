package measuredwalk.reading.lexicon;

import java.util.Map;

import org.jspecify.annotations.Nullable;

/**
 * What a phrase means: one section of a lexicon file.
 *
 * @param number its place among all entries, from 0
 * @param category what kind of thing it tells
 * @param value which one, such as {@code stiffness}; empty when the category says all
 * @param flags further words of the section's heading, such as {@code denied}, or
 * {@code limb=hind}, which has the value {@code hind}
 */
public record Entry(int number, Category category, String value, Map<String, String> flags) {

	public Entry {
		flags = Map.copyOf(flags);
	}

	/**
	 * Whether the heading carries that word.
	 * @param flag the word
	 * @return true when it does
	 */
	public boolean has(String flag) {
		return this.flags.containsKey(flag);
	}

	/**
	 * The value that the heading gives to a word.
	 * @param flag the word
	 * @return its value, or null when the heading does not carry it
	 */
	public @Nullable String flag(String flag) {
		return this.flags.get(flag);
	}

	/**
	 * Whether it is of that category and value.
	 * @param category the category
	 * @param value the value
	 * @return true when both fit
	 */
	public boolean is(Category category, String value) {
		return this.category == category && this.value.equals(value);
	}

}
