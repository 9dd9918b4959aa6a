package measuredwalk.reading.words;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

import measuredwalk.reading.Token;
import measuredwalk.reading.Tokeniser;
import measuredwalk.reading.lexicon.Lexicon;
import measuredwalk.reading.quantity.Quantities;
import org.jspecify.annotations.Nullable;

/**
 * Reads the words of a text: cuts it, writes short forms out and repairs unknown words.
 * Numbers and the dog's name stay as they are. Safe for use by many threads.
 */
public final class WordReader {

	/** The k of '2k', the th of '19th': joined to a number they are no short form. */
	private static final int MOST_SUFFIX_LETTERS = 2;

	private final Lexicon lexicon;

	private final WordList english = WordList.english();

	private final ShortForms shortForms = ShortForms.standard();

	private final Speller speller;

	/**
	 * A reader that repairs towards the lexicon's words.
	 * @param lexicon the lexicon
	 */
	public WordReader(Lexicon lexicon) {
		this.lexicon = lexicon;
		Set<String> targets = new HashSet<>();
		lexicon.forms().stream().filter(this.english::knows).forEach(targets::add);
		targets.addAll(RepairTargets.standard());
		this.speller = new Speller(targets);
	}

	/**
	 * The words of a text.
	 * @param text what was typed
	 * @param dogName the dog's name, or null
	 * @return its words
	 */
	public Words read(String text, @Nullable String dogName) {
		String name = (dogName == null) ? null : dogName.toLowerCase(Locale.ROOT);
		List<Token> typed = Tokeniser.tokens(text);
		List<Token> repaired = new ArrayList<>(typed.size());
		for (Token token : typed) {
			Token before = repaired.isEmpty() ? null : repaired.get(repaired.size() - 1);
			boolean suffix = before != null && isSuffix(token, before);
			repaired.add((token.kind() == Token.Kind.WORD && !suffix) ? repaired(token, text, name) : token);
		}
		HeardWords.repair(repaired);
		return new WordsBuilder(this.lexicon, this.english, name, repaired.size()).build(repaired);
	}

	/** The k of 'half a k', and what is joined to figures. */
	private static boolean isSuffix(Token token, Token before) {
		boolean behindNumber = before.kind() == Token.Kind.NUMBER;
		boolean joined = behindNumber && token.start() == before.end()
				&& token.end() - token.start() <= MOST_SUFFIX_LETTERS;
		boolean kilometres = token.word().equals("k") || token.word().equals("k's");
		return joined || (kilometres && (behindNumber || before.word().equals("a")));
	}

	/**
	 * Whether a word is English, a unit, or one that the lexicon knows.
	 * @param word lower case
	 * @return true when it is
	 */
	public boolean knows(String word) {
		return this.lexicon.symbolsOf(word).length > 0 || this.english.knows(word) || Quantities.knows(word);
	}

	private Token repaired(Token token, String text, @Nullable String name) {
		String word = token.word();
		if (name != null && word.startsWith(name)) {
			return token;
		}
		String writtenOut = this.shortForms
			.writtenOut(word.endsWith("'s") ? word.substring(0, word.length() - 2) : word);
		if (word.endsWith("'s")) {
			writtenOut += "'s";
		}
		if (!writtenOut.equals(word)) {
			return token.withWord(writtenOut);
		}
		if (knows(word) || word.indexOf('\'') > 0 || looksLikeName(token, text)) {
			return token;
		}
		String meant = this.speller.repaired(word);
		return (meant == null) ? token : token.withWord(this.shortForms.writtenOut(meant));
	}

	/** A capital inside a sentence: 'with Rex', which is nobody's slip. */
	private static boolean looksLikeName(Token token, String text) {
		int start = token.start();
		if (!Character.isUpperCase(text.charAt(start))
				|| (token.end() - start > 1 && Character.isUpperCase(text.charAt(start + 1)))) {
			return false;
		}
		int before = start - 1;
		while (before >= 0 && text.charAt(before) == ' ') {
			before--;
		}
		return before >= 0 && Character.isLetter(text.charAt(before));
	}

}
