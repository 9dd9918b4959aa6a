package measuredwalk.conversations;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * The words of one language: those of {@code replies.yaml} and {@code parts.yaml}.
 *
 * @param file where the phrases stand
 * @param phrases what is said
 * @param words words for words of the trade, in groups
 * @param parts what sentences are put together from
 */
record Texts(String file, Map<Phrase, String> phrases, Map<String, Map<String, String>> words,
		Map<Part, String> parts) {

	/** A group that each language fills with courtesies of its own. */
	static final String COURTESIES = "courtesies";

	private static final Pattern PLACE = Pattern.compile("\\{([a-z-]+)}");

	static Texts read(ConversationFiles files) {
		YamlMap file = files.file("replies.yaml");
		YamlMap said = file.map("phrases");
		Map<Phrase, String> phrases = new EnumMap<>(Phrase.class);
		for (Phrase phrase : Phrase.values()) {
			phrases.put(phrase, said.text(phrase.code()));
		}
		said.noOtherKeys();
		YamlMap groups = file.map("words");
		Map<String, Map<String, String>> words = new HashMap<>();
		groups.keys().forEach((group) -> words.put(group, group(groups.map(group))));
		groups.noOtherKeys();
		file.noOtherKeys();
		return new Texts(files.name("replies.yaml"), phrases, words, parts(files.file("parts.yaml")));
	}

	private static Map<Part, String> parts(YamlMap file) {
		YamlMap map = file.map("parts");
		Map<Part, String> parts = new EnumMap<>(Part.class);
		for (Part part : Part.values()) {
			parts.put(part, map.text(part.code()));
			try {
				new java.text.MessageFormat(parts.get(part), java.util.Locale.ROOT);
			}
			catch (IllegalArgumentException ex) {
				throw map.problemAt(part.code(), ex.getMessage() + "; mend the pattern, and write a single ' twice.");
			}
		}
		map.noOtherKeys();
		file.noOtherKeys();
		return parts;
	}

	private static Map<String, String> group(YamlMap map) {
		Map<String, String> words = new HashMap<>();
		map.keys().forEach((key) -> words.put(key, map.text(key)));
		return words;
	}

	/**
	 * Complains when another language's words have other places or names than the usual
	 * ones.
	 */
	Texts sameAs(Texts usual) {
		usual.phrases.forEach((phrase, text) -> samePlaces(phrase.code(), text, this.phrases.get(phrase)));
		usual.words.forEach((group, words) -> {
			Set<String> missing = new TreeSet<>(words.keySet());
			missing.removeAll(this.words.getOrDefault(group, Map.of()).keySet());
			if (!group.equals(COURTESIES) && !missing.isEmpty()) {
				throw new ConversationFileProblem(this.file + " has no words for " + missing + " under words: " + group
						+ "; add them, as they stand in " + usual.file + ".");
			}
		});
		return this;
	}

	private void samePlaces(String phrase, String usual, String text) {
		Set<String> wanted = places(usual);
		if (!wanted.equals(places(text))) {
			throw new ConversationFileProblem(this.file + ": '" + phrase + "' must have the places " + wanted
					+ ", no more and no less; it has " + places(text) + ".");
		}
	}

	static Set<String> places(String text) {
		return PLACE.matcher(text)
			.results()
			.map((java.util.regex.MatchResult place) -> place.group(1))
			.collect(Collectors.toCollection(TreeSet::new));
	}

}
