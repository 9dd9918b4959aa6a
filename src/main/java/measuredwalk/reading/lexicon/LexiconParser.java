package measuredwalk.reading.lexicon;

import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import org.jspecify.annotations.Nullable;

/**
 * Reads lexicon files. A heading such as {@code [sign stiffness severity=mild]} says what
 * the lines below it mean; a line {@code class leg: leg paw foot} makes a class.
 */
final class LexiconParser {

	private final Lexicon lexicon;

	private final Symbols symbols;

	private final Map<String, String> groups = new HashMap<>();

	private String file = "";

	private int line;

	LexiconParser(Lexicon lexicon, Symbols symbols) {
		this.lexicon = lexicon;
		this.symbols = symbols;
		symbols.of(Lexicon.NUMBER);
		symbols.of(Lexicon.DOG);
	}

	void parse(String name, List<String> lines) {
		this.file = name;
		this.line = 0;
		Entry section = null;
		for (String raw : lines) {
			this.line++;
			String text = LexiconFiles.withoutComment(raw);
			if (text.startsWith("[")) {
				section = section(text);
			}
			else if (text.startsWith("class ")) {
				addClass(text);
			}
			else if (text.startsWith("group ")) {
				addGroup(text);
			}
			else if (text.startsWith("near ") && text.contains(":") && section != null) {
				addRule(text, section);
			}
			else if (ConceptLine.is(text) && section != null) {
				this.lexicon.addConceptRule(ConceptLine.rule(text, section, this::error));
			}
			else if (!text.isEmpty()) {
				addPhrases(text, section);
			}
		}
	}

	private Entry section(String text) {
		if (!text.endsWith("]")) {
			throw error("the heading '" + text + "' is not closed", "End it with ]");
		}
		String[] words = text.substring(1, text.length() - 1).strip().split(" +", -1);
		boolean valued = words.length > 1 && !words[1].contains("=");
		Map<String, String> flags = new HashMap<>();
		for (int at = valued ? 2 : 1; at < words.length; at++) {
			int equals = words[at].indexOf('=');
			flags.put((equals < 0) ? words[at] : words[at].substring(0, equals),
					(equals < 0) ? "" : words[at].substring(equals + 1));
		}
		return this.lexicon.addEntry(category(words[0]), valued ? words[1] : "", flags);
	}

	private Category category(String code) {
		return Arrays.stream(Category.values())
			.filter((category) -> category.code().equals(code))
			.findFirst()
			.orElseThrow(() -> error("'" + code + "' is no kind of phrase",
					"Use one of " + Arrays.stream(Category.values()).map(Category::code).toList()));
	}

	private void addClass(String text) {
		int colon = text.indexOf(':');
		if (colon < 0) {
			throw error("the class has no words", "Write it as 'class name: word word'");
		}
		String name = "<" + text.substring("class ".length(), colon).strip() + ">";
		this.symbols.addClass(name,
				new LinkedHashSet<>(Arrays.asList(text.substring(colon + 1).strip().split(" +", -1))));
	}

	/** Reads a line such as {@code group rise: get up|stand}. */
	private void addGroup(String text) {
		int colon = text.indexOf(':');
		if (colon < 0) {
			throw error("the group has no phrases", "Write it as 'group name: phrase|phrase'");
		}
		this.groups.put("{" + text.substring("group ".length(), colon).strip() + "}",
				"(" + text.substring(colon + 1).strip() + ")");
	}

	private String withGroups(String text) {
		String whole = text;
		for (Map.Entry<String, String> group : this.groups.entrySet()) {
			whole = whole.replace(group.getKey(), group.getValue());
		}
		if (whole.contains("{")) {
			throw error("'" + text + "' has a group that is not known", "Define it above with 'group'");
		}
		return whole;
	}

	/** Reads a line such as {@code near 6: <gum> <pale>}. */
	private void addRule(String text, Entry section) {
		int colon = text.indexOf(':');
		if (colon < 0) {
			throw error("the rule '" + text + "' has no distance", "Write it as 'near 6: <class> <class>'");
		}
		List<String> classes = List.of(text.substring(colon + 1).strip().split(" +", -1));
		check(classes, text);
		this.lexicon.addRule(section, classes, Integer.parseInt(text.substring("near ".length(), colon).strip()));
	}

	private void addPhrases(String text, @Nullable Entry section) {
		if (section == null) {
			throw error("'" + text + "' stands before any heading", "Put a heading such as [sign stiffness] above it");
		}
		if (!text.equals(text.toLowerCase(Locale.ROOT)) || text.contains("'")) {
			throw error("'" + text + "' has capitals or an apostrophe",
					"Write lower case, and 'do not' for don't, 'he is' for he's");
		}
		for (String phrase : text.split(";", -1)) {
			checkLists(phrase.strip());
			for (List<String> words : Phrase.writtenOut(withGroups(phrase.strip()))) {
				check(words, text);
				this.lexicon.addPhrase(words, section);
			}
		}
	}

	private void checkLists(String phrase) {
		String fault = CutLists.faultOf(phrase);
		if (fault != null) {
			throw error(fault, "Leave the blank out, or put the list in brackets: (get up|stand)");
		}
	}

	private void check(List<String> words, String text) {
		if (words.isEmpty() || Phrase.isGap(words.get(0)) || Phrase.isGap(words.get(words.size() - 1))) {
			throw error("'" + text + "' may be empty, or begins or ends with .. or ~", "Begin and end it with a word");
		}
		for (String word : words) {
			if (word.startsWith("<") && !this.symbols.hasClass(word)) {
				throw error("the class " + word + " is not known", "Define it above with 'class'");
			}
		}
	}

	private LexiconError error(String what, String fix) {
		return new LexiconError(this.file, this.line, what, fix);
	}

}
