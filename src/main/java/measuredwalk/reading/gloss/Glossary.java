package measuredwalk.reading.gloss;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Predicate;

import measuredwalk.reading.Token;
import measuredwalk.reading.Tokeniser;

/**
 * A language's phrases and their English. Safe for use by many threads.
 */
public final class Glossary {

	/**
	 * A number, its comma and its tenths are three tokens; tenths have at most two
	 * figures.
	 */
	private static final int COMMA_AND_TENTHS = 3;

	private final Rules numbers;

	private final Rules phrases;

	private final Predicate<String> english;

	private final Set<String> own = new HashSet<>();

	private Glossary(Rules numbers, Rules phrases, Predicate<String> english) {
		this.numbers = numbers;
		this.phrases = phrases;
		this.english = english;
		for (Rules rules : List.of(numbers, phrases)) {
			rules.words().stream().filter((word) -> word.length() > 1 && !english.test(word)).forEach(this.own::add);
		}
	}

	/**
	 * The glossary of a language, from its folder in {@code lexicon}.
	 * @param language its two letters, such as {@code es}
	 * @param english whether a word is English
	 * @return the glossary
	 * @throws IllegalStateException when a file is wrong; the message names file, line
	 * and fix
	 */
	public static Glossary of(String language, Predicate<String> english) {
		Endings endings = new Endings(GlossaryFile.read(language + "/endings.txt"));
		GlossaryParser numbers = new GlossaryParser(endings);
		numbers.parse(GlossaryFile.read(language + "/numbers.txt"));
		GlossaryParser phrases = new GlossaryParser(endings);
		GlossaryFile.read(language + "/files.txt")
			.lines()
			.forEach((line) -> phrases.parse(GlossaryFile.read(language + "/" + line.text())));
		return new Glossary(new Rules(numbers.rules()), new Rules(phrases.rules()), english);
	}

	/**
	 * The languages that have a glossary.
	 * @return two letters for each, as {@code lexicon/languages.txt} names them
	 */
	public static List<String> languages() {
		return GlossaryFile.read("languages.txt").lines().stream().map(GlossaryFile.Line::text).toList();
	}

	/** All words of the language, those that are English too among them. */
	Set<String> words() {
		Set<String> words = new HashSet<>(this.numbers.words());
		words.addAll(this.phrases.words());
		return words;
	}

	/**
	 * The words of the language that are not English too: signs that a message is in it.
	 * @return words without accents
	 */
	Set<String> ownWords() {
		return Set.copyOf(this.own);
	}

	/**
	 * A message in the English of the rules.
	 * @param text the message
	 * @param names names of dogs, which are kept
	 * @return its English
	 */
	public Gloss gloss(String text, Collection<String> names) {
		Set<String> kept = new HashSet<>();
		names.forEach((name) -> kept.add(name.toLowerCase(Locale.ROOT)));
		List<Word> words = numbered(words(text, kept));
		GlossText gloss = new GlossText(this.phrases, this.english);
		gloss.add(words, 0, words.size());
		return gloss.whole();
	}

	/** Numbers in words become figures, so that a phrase need not know them. */
	private List<Word> numbered(List<Word> words) {
		List<Word> figures = new ArrayList<>(words.size());
		int at = 0;
		while (at < words.size()) {
			Rules.Chosen chosen = words.get(at).isMark() ? null : this.numbers.at(words, at);
			if (chosen == null) {
				figures.add(words.get(at));
				at++;
			}
			else {
				String value = chosen.rule().english();
				figures.add(new Word(value, value, " " + value, Word.Kind.NUMBER));
				at = chosen.fit().end();
			}
		}
		return figures;
	}

	private static List<Word> words(String text, Set<String> names) {
		List<Token> tokens = Tokeniser.tokens(text);
		List<Word> words = new ArrayList<>(tokens.size());
		int at = 0;
		while (at < tokens.size()) {
			boolean tenths = isNumberWithTenths(tokens, at);
			words.add(tenths ? number(tokens.get(at), tokens.get(at).word() + "," + tokens.get(at + 2).word())
					: word(tokens.get(at), text, names));
			at += tenths ? COMMA_AND_TENTHS : 1;
		}
		return words;
	}

	/** '1,5' is one number in much of the world, and two to the tokeniser. */
	private static boolean isNumberWithTenths(List<Token> tokens, int at) {
		if (at + 2 >= tokens.size() || tokens.get(at).kind() != Token.Kind.NUMBER) {
			return false;
		}
		Token comma = tokens.get(at + 1);
		Token tenths = tokens.get(at + 2);
		return comma.is(",") && comma.joined() && tenths.joined() && tenths.kind() == Token.Kind.NUMBER
				&& tenths.word().length() < COMMA_AND_TENTHS;
	}

	private static Word number(Token token, String typed) {
		String figures = Figures.english(typed);
		return new Word(figures, figures, (token.joined() ? "" : " ") + figures, Word.Kind.NUMBER);
	}

	private static Word word(Token token, String text, Set<String> names) {
		String typed = text.substring(token.start(), token.end());
		String blank = token.joined() ? "" : " ";
		if (token.kind() == Token.Kind.WORD) {
			boolean name = names.contains(token.word());
			return new Word(token.word(), Folded.word(token.word()), blank + typed,
					(name || isNamed(token, text)) ? Word.Kind.NAME : Word.Kind.WORD);
		}
		if (token.kind() == Token.Kind.NUMBER) {
			return number(token, token.word());
		}
		boolean upsideDown = typed.equals("¿") || typed.equals("¡");
		return new Word(typed, typed, upsideDown ? "" : blank + typed, Word.Kind.MARK);
	}

	/** A capital inside a sentence: 'con Rufo'. */
	private static boolean isNamed(Token token, String text) {
		int before = token.start() - 1;
		return Character.isUpperCase(text.charAt(token.start())) && token.end() - token.start() > 1
				&& Character.isLowerCase(text.charAt(token.start() + 1)) && before > 0 && text.charAt(before) == ' '
				&& Character.isLetter(text.charAt(before - 1));
	}

}
