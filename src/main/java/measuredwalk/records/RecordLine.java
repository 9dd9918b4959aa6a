package measuredwalk.records;

import java.util.List;

/**
 * An entry of a dog's record; public for the template only.
 *
 * @param text the entry in everyday words
 * @param said what was said of it, each with who said it
 */
public record RecordLine(String text, List<Words> said) {

	/**
	 * Somebody's own words.
	 *
	 * @param text the words as they were written
	 * @param by who wrote them
	 */
	public record Words(String text, String by) {
	}

	public RecordLine {
		said = List.copyOf(said);
	}

}
