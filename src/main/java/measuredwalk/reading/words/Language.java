package measuredwalk.reading.words;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

import measuredwalk.reading.Token;
import org.jspecify.annotations.Nullable;

/** Tells English from other languages and from noise, by the share of known words. */
public final class Language {

	private static final String FILE = "/measuredwalk/reading/words/foreign.txt";

	/** Rows of keys, which the word list knows as a name of the layout. */
	private static final Set<String> NOISE = Set.of("qwerty", "asdf", "qwert", "asd", "zxcv", "zxc", "dfgh", "jkl",
			"hjkl", "qwe", "sdf", "fgh", "ghj", "lkj", "poiu", "mnbv");

	private final Set<String> foreign;

	private final WordReader reader;

	/**
	 * A judge that knows the words that the reader knows.
	 * @param reader the reader
	 */
	public Language(WordReader reader) {
		this.reader = reader;
		try (InputStream stream = Language.class.getResourceAsStream(FILE)) {
			if (stream == null) {
				throw new IllegalStateException("The file " + FILE + " is not in the jar. Build the jar again.");
			}
			this.foreign = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8)).lines()
				.map(String::strip)
				.filter((line) -> !line.isEmpty() && !line.startsWith("#"))
				.collect(Collectors.toUnmodifiableSet());
		}
		catch (IOException ex) {
			throw new UncheckedIOException("The file " + FILE + " cannot be read.", ex);
		}
	}

	/**
	 * Whether a message is English, as far as its words tell. A message without words is
	 * not.
	 * @param words its words
	 * @param text what was typed
	 * @param dogName the dog's name, or null
	 * @return true when most of its words are known
	 */
	public boolean isEnglish(Words words, String text, @Nullable String dogName) {
		if (isPlaceholder(text)) {
			return false;
		}
		double known = 0;
		double strange = 0;
		for (Token token : words.tokens()) {
			if (token.kind() == Token.Kind.WORD && !isName(token, dogName)) {
				double share = strangeness(token, text);
				strange += share;
				known += 1 - share;
			}
		}
		return (strange == 0) ? (known > 0 || !hasPictures(words)) : known > strange * 1.2;
	}

	/** What an app writes for what is no text: '[sticker]', '<media omitted>'. */
	private static boolean isPlaceholder(String text) {
		String bare = text.strip();
		boolean enclosed = (bare.startsWith("[") && bare.endsWith("]")) || (bare.startsWith("<") && bare.endsWith(">"));
		return enclosed && bare.chars().noneMatch(Character::isDigit);
	}

	/** A sticker: pictures and no word. */
	private static boolean hasPictures(Words words) {
		return words.tokens()
			.stream()
			.anyMatch((token) -> token.kind() == Token.Kind.SYMBOL && token.word().length() > 1)
				&& words.tokens().stream().noneMatch((token) -> token.kind() == Token.Kind.NUMBER);
	}

	private static boolean isName(Token token, @Nullable String dogName) {
		return dogName != null && token.word().startsWith(dogName.toLowerCase(Locale.ROOT));
	}

	private double strangeness(Token token, String text) {
		String word = token.word();
		if (word.length() <= 2 && !this.foreign.contains(word)) {
			return 0.3;
		}
		String typed = text.substring(token.start(), token.end()).toLowerCase(Locale.ROOT);
		if (NOISE.contains(word) || this.foreign.contains(word) || this.foreign.contains(typed)) {
			return 1;
		}
		int apostrophe = word.indexOf('\'');
		String stem = (apostrophe > 1) ? word.substring(0, apostrophe) : word;
		if (!this.reader.knows(stem) && !this.reader.knows(word)) {
			boolean name = Character.isUpperCase(text.charAt(token.start()));
			return name ? ((token.start() > 0) ? 0.5 : 0.7) : 1;
		}
		boolean repaired = token.end() - token.start() != word.length()
				|| !text.regionMatches(true, token.start(), word, 0, word.length());
		return repaired ? 0.3 : 0;
	}

}
