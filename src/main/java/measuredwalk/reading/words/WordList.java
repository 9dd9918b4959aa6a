package measuredwalk.reading.words;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.zip.GZIPInputStream;

/** The words of English, American and British, so that only unknown ones are repaired. */
public final class WordList {

	private static final String FILE = "/measuredwalk/reading/words/english.txt.gz";

	/**
	 * Most two-letter entries of the list are abbreviations, which would hide slips of
	 * the thumb and make foreign text look English. These are the words among them.
	 */
	private static final Set<String> SHORT_WORDS = Set.of("a", "i", "ad", "ah", "am", "an", "as", "at", "be", "by",
			"do", "ex", "go", "ha", "he", "hi", "ho", "if", "in", "is", "it", "me", "mm", "my", "no", "of", "oh", "ok",
			"on", "or", "ow", "ox", "so", "to", "tv", "up", "us", "we", "km", "kg", "cm", "mg", "ft", "pm", "yd", "uh",
			"um", "eh", "er", "st", "lb", "hr", "oz");

	/** Names that tell a time or a people, and so nobody. */
	private static final Set<String> NO_PERSONS = Set.of("monday", "tuesday", "wednesday", "thursday", "friday",
			"saturday", "sunday", "january", "february", "april", "june", "july", "august", "september", "october",
			"november", "december", "christmas", "easter", "english", "british", "american", "scottish", "irish",
			"welsh", "french", "german", "spanish", "halloween", "boxing", "god", "lord", "facebook", "internet");

	private final Set<String> words;

	private final Set<String> names;

	private WordList(Set<String> entries) {
		this.words = new HashSet<>();
		entries.forEach((entry) -> this.words.add(entry.toLowerCase(Locale.ROOT)));
		this.names = entries.stream()
			.filter((entry) -> Character.isUpperCase(entry.charAt(0)))
			.map((entry) -> entry.toLowerCase(Locale.ROOT))
			.filter((name) -> !NO_PERSONS.contains(name))
			.collect(Collectors.toCollection(HashSet::new));
	}

	/**
	 * Whether a word is only ever a name, of a person or a place.
	 * @param word lower case
	 * @return true when it is
	 */
	public boolean isName(String word) {
		return this.names.contains(word);
	}

	/**
	 * The list that is packed in the jar.
	 * @return the list
	 */
	public static WordList english() {
		try (InputStream packed = WordList.class.getResourceAsStream(FILE)) {
			if (packed == null) {
				throw new IllegalStateException("The word list " + FILE + " is not in the jar. Build the jar again.");
			}
			BufferedReader lines = new BufferedReader(
					new InputStreamReader(new GZIPInputStream(packed), StandardCharsets.UTF_8));
			return new WordList(lines.lines()
				.filter((word) -> word.length() > 2 || SHORT_WORDS.contains(word))
				.collect(Collectors.toUnmodifiableSet()));
		}
		catch (IOException ex) {
			throw new UncheckedIOException("The word list " + FILE + " cannot be read.", ex);
		}
	}

	/**
	 * Whether a word is English.
	 * @param word lower case
	 * @return true when the list has it
	 */
	public boolean knows(String word) {
		return this.words.contains(word);
	}

}
