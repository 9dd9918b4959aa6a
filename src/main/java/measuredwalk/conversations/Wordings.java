package measuredwalk.conversations;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Words that some people say otherwise: 'leash' for 'lead', 'vet' for 'clinic'. */
final class Wordings implements UnaryOperator<String> {

	/** A value of one lower-case word is a name in a file, and stays. */
	private static final Pattern NAME = Pattern.compile("[a-z-]+");

	private final Map<String, String> words;

	private final Pattern any;

	private Wordings(Map<String, String> words) {
		this.words = words;
		String choice = words.keySet()
			.stream()
			.sorted(Comparator.comparing(String::length).reversed())
			.map(Pattern::quote)
			.collect(Collectors.joining("|"));
		this.any = Pattern.compile("(?<![\\p{L}\\d])(?:" + choice + ")(?![\\p{L}\\d])", Pattern.CASE_INSENSITIVE);
	}

	static Wordings read(YamlMap file) {
		Map<String, String> words = new LinkedHashMap<>();
		YamlMap map = file.map("words");
		map.keys().forEach((key) -> words.put(key, map.text(key)));
		file.noOtherKeys();
		if (words.isEmpty()) {
			throw file.problemAt("words", "there must be at least one word; or take the file out of languages.yaml.");
		}
		return new Wordings(words);
	}

	/** Replaces whole words; a capital stays a capital. */
	@Override
	public String apply(String text) {
		if (NAME.matcher(text).matches()) {
			return text;
		}
		Matcher each = this.any.matcher(text);
		StringBuilder changed = new StringBuilder();
		while (each.find()) {
			each.appendReplacement(changed, Matcher.quoteReplacement(otherwise(each.group())));
		}
		return each.appendTail(changed).toString();
	}

	private String otherwise(String word) {
		String said = this.words.get(word);
		if (said != null) {
			return said;
		}
		String small = word.substring(0, 1).toLowerCase(java.util.Locale.ROOT) + word.substring(1);
		String other = this.words.getOrDefault(small, word);
		return Character.isUpperCase(word.charAt(0))
				? other.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + other.substring(1) : other;
	}

}
