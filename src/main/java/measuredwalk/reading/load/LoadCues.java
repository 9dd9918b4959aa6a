package measuredwalk.reading.load;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

import measuredwalk.reading.words.Words;
import measuredwalk.signs.Coded;
import measuredwalk.signs.LoadKind;
import org.jspecify.annotations.Nullable;

/** The list of words that tell of a load. Immutable once it is loaded. */
final class LoadCues {

	private static final String FILE = "/measuredwalk/reading/load/load.txt";

	private final Map<String, List<LoadCue>> byFirstWord = new HashMap<>();

	private LoadCues() {
	}

	/** The list that is packed in the jar. */
	static LoadCues standard() {
		return of(lines());
	}

	/**
	 * Reads a list. A line in square brackets names a role or a kind of load; each other
	 * line is a cue, word by word, with the forms of a word split by bars.
	 * @param lines its lines
	 * @return the cues
	 * @throws IllegalStateException when a line cannot be used; the message names it
	 */
	static LoadCues of(List<String> lines) {
		LoadCues cues = new LoadCues();
		String section = "";
		for (int number = 0; number < lines.size(); number++) {
			String line = lines.get(number).replaceAll("#.*", "").strip();
			if (line.startsWith("[") && line.endsWith("]")) {
				section = line.substring(1, line.length() - 1);
			}
			else if (!line.isEmpty()) {
				cues.add(section, line, number + 1);
			}
		}
		return cues;
	}

	private void add(String section, String line, int number) {
		try {
			boolean load = List.of(LoadKind.values()).stream().anyMatch((kind) -> kind.code().equals(section));
			CueRole role = load ? CueRole.LOAD : CueRole.valueOf(section.toUpperCase(Locale.ROOT));
			List<Set<String>> forms = List.of(line.split(" +"))
				.stream()
				.map((word) -> Set.of(word.split("\\|")))
				.toList();
			LoadCue cue = new LoadCue(role, load ? Coded.of(LoadKind.class, section) : null, forms);
			forms.get(0)
				.forEach((first) -> this.byFirstWord.computeIfAbsent(first, (key) -> new ArrayList<>()).add(cue));
		}
		catch (IllegalArgumentException ex) {
			throw new IllegalStateException(FILE + " line " + number + ": '" + line + "' cannot be used under ["
					+ section + "]. Name a kind of load or a role above it, and no form twice.", ex);
		}
	}

	/** The longest cue at a place, or null. */
	@Nullable LoadCue longestAt(Words words, int at) {
		LoadCue longest = null;
		for (LoadCue cue : this.byFirstWord.getOrDefault(words.form(at), List.of())) {
			if ((longest == null || cue.length() > longest.length()) && cue.isAt(words, at)) {
				longest = cue;
			}
		}
		return longest;
	}

	private static List<String> lines() {
		try (InputStream stream = LoadCues.class.getResourceAsStream(FILE)) {
			if (stream == null) {
				throw new IllegalStateException("The list " + FILE + " is not in the jar.");
			}
			return new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8)).lines().toList();
		}
		catch (IOException ex) {
			throw new UncheckedIOException("The list " + FILE + " cannot be read.", ex);
		}
	}

}
