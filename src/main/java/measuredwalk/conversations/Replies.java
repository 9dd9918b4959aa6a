package measuredwalk.conversations;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

import measuredwalk.signs.Coded;

/** What the bot says when it does not ask: the words of {@code replies.yaml}. */
public final class Replies {

	private final Map<Phrase, String> phrases;

	private final Map<String, Map<String, String>> words;

	private Replies(Map<Phrase, String> phrases, Map<String, Map<String, String>> words) {
		this.phrases = phrases;
		this.words = words;
	}

	static Replies read(ConversationFiles files) {
		YamlMap file = files.file("replies.yaml");
		YamlMap said = file.map("phrases");
		Map<Phrase, String> phrases = new EnumMap<>(Phrase.class);
		for (Phrase phrase : Phrase.values()) {
			phrases.put(phrase, said.text(phrase.code()));
		}
		said.noOtherKeys();
		YamlMap groups = file.map("words");
		Map<String, Map<String, String>> words = new HashMap<>();
		for (String group : groups.keys()) {
			words.put(group, group(groups.map(group)));
		}
		groups.noOtherKeys();
		file.noOtherKeys();
		return new Replies(phrases, words);
	}

	private static Map<String, String> group(YamlMap map) {
		Map<String, String> words = new HashMap<>();
		map.keys().forEach((key) -> words.put(key, map.text(key)));
		return words;
	}

	/**
	 * A phrase with its places filled.
	 * @param phrase the phrase
	 * @param places what stands in each place, such as {@code dog}
	 * @return the text to send
	 */
	public String say(Phrase phrase, Map<String, ?> places) {
		return fill(this.phrases.get(phrase), places);
	}

	/**
	 * A phrase without places.
	 * @param phrase the phrase
	 * @return the text to send
	 */
	public String say(Phrase phrase) {
		return say(phrase, Map.of());
	}

	/**
	 * The everyday word for a word of the trade.
	 * @param group which words, such as {@code signs}
	 * @param coded the word of the trade
	 * @return the everyday word
	 * @throws ConversationFileProblem when {@code replies.yaml} has no such word
	 */
	public String word(String group, Coded coded) {
		return Optional.ofNullable(this.words.getOrDefault(group, Map.of()).get(coded.code()))
			.orElseThrow(() -> new ConversationFileProblem(
					"replies.yaml has no word for '" + coded.code() + "' under words: " + group + "; add it."));
	}

	/**
	 * The answer to a small word of courtesy.
	 * @param text what was written
	 * @return the answer, or empty when it is no such word
	 */
	public Optional<String> courtesy(String text) {
		String bare = text.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L} ]", "").strip();
		return Optional.ofNullable(this.words.getOrDefault("courtesies", Map.of()).get(bare));
	}

	static String fill(String text, Map<String, ?> places) {
		String filled = text;
		for (Map.Entry<String, ?> place : places.entrySet()) {
			filled = filled.replace("{" + place.getKey() + "}", String.valueOf(place.getValue()));
		}
		return filled;
	}

}
