package measuredwalk.reading.words;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;

/** Short forms, dialect and usual slips, and the words they stand for. */
final class ShortForms {

	private static final String FILE = "/measuredwalk/reading/words/short-forms.txt";

	private final Map<String, String> meant;

	private ShortForms(Map<String, String> meant) {
		this.meant = new HashMap<>(meant);
	}

	static ShortForms standard() {
		try (InputStream stream = ShortForms.class.getResourceAsStream(FILE)) {
			if (stream == null) {
				throw new IllegalStateException("The file " + FILE + " is not in the jar. Build the jar again.");
			}
			Map<String, String> meant = new HashMap<>();
			new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8)).lines()
				.filter((line) -> !line.isBlank() && !line.startsWith("#"))
				.map((line) -> line.strip().split(" +", -1))
				.forEach((pair) -> meant.put(pair[0], pair[1]));
			return new ShortForms(meant);
		}
		catch (IOException ex) {
			throw new UncheckedIOException("The file " + FILE + " cannot be read.", ex);
		}
	}

	/**
	 * The word that a short form stands for.
	 * @param typed lower case
	 * @return the word, or what was typed when it is no short form
	 */
	String writtenOut(String typed) {
		return this.meant.getOrDefault(typed, typed);
	}

	Set<String> forms() {
		return this.meant.keySet();
	}

}
