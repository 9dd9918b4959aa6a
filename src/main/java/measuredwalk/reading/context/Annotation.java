package measuredwalk.reading.context;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import measuredwalk.reading.lexicon.Category;
import measuredwalk.reading.lexicon.Lexicon;
import measuredwalk.reading.lexicon.Mention;
import measuredwalk.reading.words.Words;
import org.jspecify.annotations.Nullable;

/**
 * The phrases of a message, settled: of phrases that compete for the same words the
 * longest stays, and a guard hides what it overlaps.
 */
public final class Annotation {

	private static final Comparator<Mention> STRONGEST = Annotation::byStrength;

	private final Words words;

	private final List<Mention> mentions = new ArrayList<>();

	private final List<Mention> concepts = new ArrayList<>();

	private final @Nullable Mention[] cover;

	private final boolean[] terminates;

	private final Clauses clauses;

	private Annotation(Words words) {
		this.words = words;
		this.cover = new Mention[words.size()];
		this.terminates = new boolean[words.size()];
		this.clauses = new Clauses(words);
	}

	/**
	 * Finds and settles the phrases of a message.
	 * @param words its words
	 * @param lexicon the phrases there are
	 * @return the phrases it has
	 */
	public static Annotation of(Words words, Lexicon lexicon) {
		Annotation annotation = new Annotation(words);
		List<Mention> found = lexicon.find(words.symbols(), words.limits());
		List<Mention> concepts = takeConcepts(found);
		found.sort(STRONGEST);
		found.stream().filter((mention) -> mention.category().isMeaning()).forEach(annotation::settle);
		found.stream().filter((mention) -> !mention.category().isMeaning()).forEach(annotation::settleModifier);
		annotation.mentions.sort(Comparator.comparing(Mention::from));
		annotation.settleConcepts(concepts);
		return annotation;
	}

	/** The longest first, of equals a guard, then by category and place. */
	private static int byStrength(Mention one, Mention other) {
		int strength = Integer.compare(strength(other), strength(one));
		int category = (strength != 0) ? strength : one.category().compareTo(other.category());
		return (category != 0) ? category : Integer.compare(one.from(), other.from());
	}

	private static int strength(Mention mention) {
		return 2 * mention.length() + ((mention.category() == Category.GUARD) ? 1 : 0);
	}

	private static List<Mention> takeConcepts(List<Mention> found) {
		List<Mention> concepts = new ArrayList<>();
		found.removeIf((mention) -> mention.category() == Category.CONCEPT && concepts.add(mention));
		return concepts;
	}

	/** Concepts may share words, but a guard hides them as it hides a phrase. */
	private void settleConcepts(List<Mention> found) {
		List<Mention> masks = found.stream().filter((mention) -> mention.entry().has("not")).toList();
		for (Mention mention : found) {
			boolean masked = masks.stream()
				.anyMatch((mask) -> mask.value().equals(mention.value()) && mask.overlaps(mention));
			if (!masked && (mention.entry().has("open") || !isGuarded(mention))) {
				this.concepts.add(mention);
			}
		}
	}

	private boolean isGuarded(Mention mention) {
		for (int at = mention.from(); at < mention.to(); at++) {
			Mention over = this.cover[at];
			if (over != null && over.category() == Category.GUARD && over.length() >= mention.length()) {
				return true;
			}
		}
		return false;
	}

	private void settle(Mention mention) {
		Mention before = this.cover[mention.from()];
		for (int at = mention.from(); at < mention.to(); at++) {
			if (this.cover[at] != null && !sameWords(this.cover[at], mention)) {
				return;
			}
		}
		if (before != null && !(before.category() == Category.SIGN && mention.category() == Category.SIGN)) {
			return;
		}
		this.mentions.add(mention);
		for (int at = mention.from(); at < mention.to(); at++) {
			this.cover[at] = (before == null) ? mention : before;
		}
	}

	private static boolean sameWords(Mention one, Mention other) {
		return one.from() == other.from() && one.to() == other.to();
	}

	private void settleModifier(Mention mention) {
		for (int at = mention.from(); at < mention.to(); at++) {
			Mention over = this.cover[at];
			if (over != null && over.category() == Category.GUARD && over.length() >= mention.length()) {
				return;
			}
		}
		if (isSwallowed(mention)) {
			return;
		}
		if (mention.category() == Category.TERMINATION) {
			Mention over = this.cover[mention.from()];
			if (over == null || over.length() <= mention.length()) {
				this.terminates[mention.from()] = true;
			}
			return;
		}
		if (!isInLonger(mention, mention.category())) {
			this.mentions.add(mention);
		}
	}

	/** The 'end' of 'hind end', the 'right' of 'right after'. */
	private boolean isInLonger(Mention mention, Category category) {
		for (Mention other : this.mentions) {
			if (other.category() == category && other.overlaps(mention) && other.length() > mention.length()) {
				return true;
			}
		}
		return false;
	}

	/** The 'so' of 'not so stiff' is no grade, the 'right' of 'right as rain' no side. */
	private boolean isSwallowed(Mention mention) {
		if ((mention.category() == Category.SIDE || mention.category() == Category.LIMB)
				&& isInLonger(mention, Category.MOMENT)) {
			return true;
		}
		if (mention.category() == Category.MOMENT && isInLonger(mention, Category.LIMB)) {
			return true;
		}
		Mention over = this.cover[mention.from()];
		if (over == null || over.length() <= mention.length()) {
			return false;
		}
		return switch (mention.category()) {
			case SEVERITY -> over.category() == Category.HEDGE || over.category() == Category.NEGATION;
			case SIDE, LIMB -> over.category() == Category.OVERALL;
			default -> false;
		};
	}

	/**
	 * The words.
	 * @return the words
	 */
	public Words words() {
		return this.words;
	}

	/**
	 * How the words fall into clauses.
	 * @return the clauses
	 */
	public Clauses clauses() {
		return this.clauses;
	}

	/**
	 * All phrases, in order of their first word.
	 * @return the phrases
	 */
	public List<Mention> mentions() {
		return this.mentions;
	}

	/**
	 * The phrases of one category, in order.
	 * @param category the category
	 * @return the phrases
	 */
	public List<Mention> mentions(Category category) {
		List<Mention> chosen = new ArrayList<>();
		for (Mention mention : this.mentions) {
			if (mention.category() == category) {
				chosen.add(mention);
			}
		}
		return chosen;
	}

	/**
	 * The concepts of the urgent rules, in order of their first word.
	 * @return the concepts, which may overlap
	 */
	public List<Mention> concepts() {
		return this.concepts;
	}

	/**
	 * The meaning that covers a word.
	 * @param at index of the word
	 * @return the phrase, or null
	 */
	public @Nullable Mention coverOf(int at) {
		return this.cover[at];
	}

	/**
	 * Whether a cue's scope ends at a word.
	 * @param at index of the word
	 * @return true when it does
	 */
	public boolean isTermination(int at) {
		return this.terminates[at];
	}

}
