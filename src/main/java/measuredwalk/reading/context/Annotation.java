package measuredwalk.reading.context;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import measuredwalk.reading.lexicon.Category;
import measuredwalk.reading.lexicon.Lexicon;
import measuredwalk.reading.lexicon.Mention;
import measuredwalk.reading.lexicon.WordClass;
import measuredwalk.reading.words.Words;
import org.jspecify.annotations.Nullable;

/**
 * The phrases of a message, settled: of phrases that compete for the same words the
 * longest stays, and a guard hides what it overlaps.
 */
public final class Annotation {

	private static final Comparator<Mention> STRONGEST = Comparator
		.comparing(
				(Mention mention) -> mention.category() == Category.GUARD ? mention.length() + 0.5 : mention.length(),
				Comparator.reverseOrder())
		.thenComparing(Mention::category)
		.thenComparing(Mention::from);

	private final Words words;

	private final Lexicon lexicon;

	private final List<Mention> mentions = new ArrayList<>();

	private final List<Mention> concepts = new ArrayList<>();

	private final @Nullable Mention[] cover;

	private final boolean[] terminates;

	private final Clauses clauses;

	private Annotation(Words words, Lexicon lexicon) {
		this.words = words;
		this.lexicon = lexicon;
		this.cover = new Mention[words.size()];
		this.terminates = new boolean[words.size()];
		this.clauses = new Clauses(words, lexicon);
	}

	/**
	 * Finds and settles the phrases of a message.
	 * @param words its words
	 * @param lexicon the phrases there are
	 * @return the phrases it has
	 */
	public static Annotation of(Words words, Lexicon lexicon) {
		Annotation annotation = new Annotation(words, lexicon);
		List<Mention> found = lexicon.find(words.symbols(), words.limits());
		List<Mention> concepts = takeConcepts(found);
		found.sort(STRONGEST);
		found.stream().filter((mention) -> mention.category().isMeaning()).forEach(annotation::settle);
		found.stream().filter((mention) -> !mention.category().isMeaning()).forEach(annotation::settleModifier);
		annotation.mentions.sort(Comparator.comparing(Mention::from));
		annotation.settleConcepts(concepts);
		return annotation;
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
		boolean shorter = this.mentions.stream()
			.anyMatch((other) -> other.category() == mention.category() && other.overlaps(mention)
					&& other.length() > mention.length());
		if (!shorter) {
			this.mentions.add(mention);
		}
	}

	/** The 'end' of 'hind end'. */
	private boolean isInLimb(Mention mention) {
		return this.mentions.stream()
			.anyMatch((other) -> other.category() == Category.LIMB && other.overlaps(mention)
					&& other.length() > mention.length());
	}

	/** The 'right' of 'right after'. */
	private boolean isInMoment(Mention mention) {
		return this.mentions.stream()
			.anyMatch((other) -> other.category() == Category.MOMENT && other.overlaps(mention)
					&& other.length() > mention.length());
	}

	/** The 'so' of 'not so stiff' is no grade, the 'right' of 'right as rain' no side. */
	private boolean isSwallowed(Mention mention) {
		if ((mention.category() == Category.SIDE || mention.category() == Category.LIMB) && isInMoment(mention)) {
			return true;
		}
		if (mention.category() == Category.MOMENT && isInLimb(mention)) {
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
	 * Whether a word belongs to a class.
	 * @param at any index
	 * @param words the class
	 * @return true when there is such a word and it does
	 */
	public boolean is(int at, WordClass words) {
		return at >= 0 && at < this.words.size() && this.lexicon.isOf(this.words.symbols()[at], words);
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
