package measuredwalk.reading.lexicon;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;

/** Everything the reader knows of phrases. Immutable once it is loaded. */
public final class Lexicon {

	/** The class of every number, written in figures or in words. */
	public static final String NUMBER = "<number>";

	/** The class of names that are not the dog's. */
	public static final String NAME = "<name>";

	/** The class of the dog's own name. */
	public static final String DOG = "<dog>";

	private final List<Entry> entries = new ArrayList<>();

	private final List<ScreenRule> rules = new ArrayList<>();

	private final List<ConceptRule> conceptRules = new ArrayList<>();

	private final Symbols symbols = new Symbols();

	private final PhraseTrie trie = new PhraseTrie(this.symbols.of("<barrier>"), this.symbols.of("<small>"));

	private final int[] number = { this.symbols.of(NUMBER) };

	private final int[] name = { this.symbols.of(NAME) };

	private final int[] dog = { this.symbols.of(DOG) };

	private final int[] wordClasses = Arrays.stream(WordClass.values())
		.mapToInt((words) -> this.symbols.of(words.code()))
		.toArray();

	private final LexiconParser parser = new LexiconParser(this, this.symbols);

	Lexicon() {
	}

	/**
	 * The lexicon that is packed in the jar.
	 * @return the lexicon
	 * @throws LexiconError when a line cannot be used; the message names file, line and
	 * fix
	 */
	public static Lexicon standard() {
		Lexicon lexicon = new Lexicon();
		for (String file : LexiconFiles.standard()) {
			lexicon.parse(file, LexiconFiles.rawLines(file));
		}
		return lexicon;
	}

	void parse(String file, List<String> lines) {
		this.parser.parse(file, lines);
	}

	Entry addEntry(Category category, String value, java.util.Map<String, String> flags) {
		Entry entry = new Entry(this.entries.size(), category, value, flags);
		this.entries.add(entry);
		return entry;
	}

	void addRule(Entry entry, List<String> classes, int window) {
		this.rules.add(new ScreenRule(entry, classes.stream().mapToInt(this.symbols::of).toArray(), window));
	}

	/**
	 * The rules of the emergency screen.
	 * @return the rules
	 */
	public List<ScreenRule> rules() {
		return List.copyOf(this.rules);
	}

	void addConceptRule(ConceptRule rule) {
		this.conceptRules.add(rule);
	}

	/**
	 * The rules that combine concepts.
	 * @return the rules
	 */
	public List<ConceptRule> conceptRules() {
		return List.copyOf(this.conceptRules);
	}

	/**
	 * Every meaning there is.
	 * @return the entries, each at the place of its number
	 */
	public List<Entry> entries() {
		return List.copyOf(this.entries);
	}

	void addPhrase(List<String> words, Entry entry) {
		this.trie.add(words.stream().mapToInt(this.symbols::of).toArray(), entry.number());
	}

	/**
	 * The symbols of a typed word, to be given to {@link #find}.
	 * @param word the word, lower case
	 * @return its symbols
	 */
	public int[] symbolsOf(String word) {
		return this.symbols.ofForm(word);
	}

	/**
	 * Whether a typed word belongs to a class.
	 * @param known the word's symbols
	 * @param words the class
	 * @return true when it does
	 */
	public boolean isOf(int[] known, WordClass words) {
		int wanted = this.wordClasses[words.ordinal()];
		for (int symbol : known) {
			if (symbol == wanted) {
				return true;
			}
		}
		return false;
	}

	/**
	 * What a number in figures stands for.
	 * @param figures the number
	 * @return the symbol of {@link #NUMBER}, and those of these very figures
	 */
	public int[] symbolsOfNumber(String figures) {
		return with(this.number, figures);
	}

	/**
	 * What a name stands for that is not the dog's.
	 * @param name the name, lower case
	 * @return the symbol of {@link #NAME}, and those of the word
	 */
	public int[] symbolsOfName(String name) {
		return with(this.name, name);
	}

	private int[] with(int[] symbol, String word) {
		int[] known = this.symbols.ofForm(word);
		if (known.length == 0) {
			return symbol;
		}
		int[] both = Arrays.copyOf(known, known.length + 1);
		both[known.length] = symbol[0];
		return both;
	}

	/**
	 * What the dog's own name stands for.
	 * @return the symbol of {@link #DOG}
	 */
	public int[] dogSymbol() {
		return this.dog;
	}

	/**
	 * Every form that some phrase knows: what unknown words may be repaired to.
	 * @return lower-case words
	 */
	public Set<String> forms() {
		return Set.copyOf(this.symbols.forms());
	}

	/**
	 * Finds all phrases, overlapping ones too.
	 * @param words the symbols of each word
	 * @param limits for each word the index after the last word that a phrase beginning
	 * there may cover
	 * @return what was found, in order of the first word
	 */
	public List<Mention> find(int[][] words, int[] limits) {
		List<Mention> found = new ArrayList<>();
		PhraseTrie.Found collect = (entry, from, to) -> found.add(new Mention(this.entries.get(entry), from, to));
		for (int at = 0; at < words.length; at++) {
			if (words[at].length > 0) {
				this.trie.search(words, at, limits[at], collect);
			}
		}
		return found;
	}

}
