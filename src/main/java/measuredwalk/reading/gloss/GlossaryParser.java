package measuredwalk.reading.gloss;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import measuredwalk.reading.lexicon.Phrase;

/**
 * Reads a glossary's lines: {@code se? ~sentar => sat down}. A plain word is that form
 * alone, {@code ~word} all its forms, {@code =word} is typed with these very accents,
 * {@code <n>} a number, {@code <m>} one below 60, {@code <name>} up to three words of a
 * class, {@code <name!>} one of them that is not kept, {@code ..} up to two words of any
 * kind, {@code ^} the beginning or end of a clause. {@code a|b}, {@code word?} and
 * {@code (a b|c)} are as in the English lexicon, and {@code class name: words} makes a
 * class.
 */
final class GlossaryParser {

	private static final char CHOICE = '/';

	private static final int MOST_BETWEEN = 2;

	private static final int MOST_OF_CLASS = 3;

	private final Endings endings;

	private final Map<String, Set<String>> classes = new HashMap<>();

	private final List<GlossRule> rules = new ArrayList<>();

	GlossaryParser(Endings endings) {
		this.endings = endings;
	}

	List<GlossRule> rules() {
		return this.rules;
	}

	void parse(GlossaryFile file) {
		for (GlossaryFile.Line line : file.lines()) {
			if (line.text().startsWith("class ")) {
				addClass(line);
			}
			else {
				addRules(line);
			}
		}
	}

	private void addClass(GlossaryFile.Line line) {
		String[] sides = line.text().substring("class ".length()).split(":", 2);
		if (sides.length < 2) {
			throw line.error("the class has no words", "Write it as 'class name: word word'");
		}
		Set<String> words = new LinkedHashSet<>();
		for (String word : sides[1].strip().split(" +", -1)) {
			words.addAll(forms(word));
		}
		this.classes.put("<" + sides[0].strip() + ">", words);
	}

	private void addRules(GlossaryFile.Line line) {
		String[] sides = line.text().split("=>", 2);
		if (sides.length < 2) {
			throw line.error("'" + line.text() + "' has no English",
					"Write it as 'phrase => English', or '=> -' for none");
		}
		String english = sides[1].strip().equals("-") ? "" : sides[1].strip();
		long kept = 0;
		if (sides[0].contains("|(") || sides[0].contains(")|")) {
			throw line.error("a bracket stands beside |", "Put the whole choice in brackets: (one|two words)");
		}
		for (String phrase : sides[0].split(";", -1)) {
			for (List<String> words : Phrase.writtenOut(choices(phrase.strip()))) {
				List<Piece> pieces = pieces(words, line);
				kept = Math.max(kept, pieces.stream().filter(Piece::isKept).count());
				this.rules.add(new GlossRule(pieces, english));
			}
		}
		checkKept(kept, english, line);
	}

	/** Of the phrases of one line one at least keeps what their English asks for. */
	private static void checkKept(long kept, String english, GlossaryFile.Line line) {
		for (int at = english.indexOf('$'); at >= 0; at = english.indexOf('$', at + 1)) {
			if (at + 1 == english.length() || english.charAt(at + 1) - '0' > kept) {
				throw line.error("the English asks for more than the phrase keeps",
						"Only <n>, <m>, <class> and .. are kept; $1 is the first of them");
			}
		}
	}

	/** A choice of single words stays one place; only brackets are written out. */
	private static String choices(String phrase) {
		StringBuilder text = new StringBuilder(phrase);
		int depth = 0;
		for (int at = 0; at < text.length(); at++) {
			char letter = text.charAt(at);
			depth += (letter == '(') ? 1 : (letter == ')') ? -1 : 0;
			if (letter == '|' && depth == 0) {
				text.setCharAt(at, CHOICE);
			}
		}
		return text.toString();
	}

	private List<Piece> pieces(List<String> words, GlossaryFile.Line line) {
		List<Piece> pieces = words.stream().map((word) -> piece(word, line)).toList();
		if (pieces.isEmpty() || pieces.stream().noneMatch(Piece::isOwnWord)
				|| pieces.get(0).kind() == Piece.Kind.BETWEEN) {
			throw line.error("a phrase has no word of its own to begin with", "Begin it with a word");
		}
		return pieces;
	}

	private Piece piece(String word, GlossaryFile.Line line) {
		return switch (word) {
			case "^" -> Piece.EDGE;
			case "<n>" -> Piece.FIGURE;
			case "<m>" -> Piece.MINUTE;
			case ".." -> Piece.between(MOST_BETWEEN, Set.of());
			default -> word.startsWith("<") ? ofClass(word, line)
					: word.startsWith("=") ? Piece.accented(word.substring(1)) : Piece.oneOf(forms(word));
		};
	}

	/**
	 * {@code <name>} is up to three words of a class, {@code <name!>} exactly one, not
	 * kept.
	 */
	private Piece ofClass(String name, GlossaryFile.Line line) {
		boolean one = name.endsWith("!>");
		Set<String> words = this.classes.get(one ? name.replace("!", "") : name);
		if (words == null) {
			throw line.error("the class " + name + " is not known", "Define it above with 'class'");
		}
		return one ? Piece.oneOf(words) : Piece.between(MOST_OF_CLASS, words);
	}

	private Set<String> forms(String word) {
		Set<String> forms = new LinkedHashSet<>();
		Arrays.stream(word.split(String.valueOf(CHOICE), -1))
			.forEach((one) -> forms.addAll(
					one.startsWith("~") ? this.endings.of(Folded.word(one.substring(1))) : Set.of(Folded.word(one))));
		return forms;
	}

}
