package measuredwalk.reading.words;

import java.util.Arrays;
import java.util.Collection;
import java.util.HashSet;
import java.util.Set;
import java.util.stream.IntStream;

import org.jspecify.annotations.Nullable;

/**
 * Repairs words that no English word list knows to the lexicon word most likely meant.
 * Candidates are found by their deletions (the symmetric delete method, Garbe 2012), so
 * that one look-up needs no pass over the lexicon.
 */
public final class Speller {

	/** Shorter words are too easily turned into others. */
	private static final int SHORTEST = 3;

	private static final int LONGEST = 24;

	/** Words this long may carry two slips. */
	private static final int TWO_SLIPS = 7;

	private static final long LOWER_HALF = 0xFFFF_FFFFL;

	private final String[] words;

	/**
	 * For each deletion of each word the deletion's hash in the upper half and the word's
	 * place in the lower one, in rising order: a tenth of the memory of a map of texts.
	 */
	private final long[] byDeletion;

	/**
	 * A speller that repairs to these words.
	 * @param words lower-case words
	 */
	public Speller(Collection<String> words) {
		this.words = words.stream()
			.filter((word) -> word.length() >= SHORTEST && word.chars().allMatch(Character::isLetter))
			.toArray(String[]::new);
		this.byDeletion = IntStream.range(0, this.words.length)
			.mapToObj(this::entries)
			.flatMapToLong(Arrays::stream)
			.sorted()
			.distinct()
			.toArray();
	}

	private long[] entries(int place) {
		return Arrays.stream(deletions(this.words[place])).mapToLong((hash) -> entry(hash, place)).toArray();
	}

	private static long entry(int hash, int place) {
		return ((long) hash << Integer.SIZE) | place;
	}

	/**
	 * The word most likely meant.
	 * @param typed an unknown word, lower case
	 * @return the word meant, or null when none is near enough or two are as near
	 */
	public @Nullable String repaired(String typed) {
		if (typed.length() < SHORTEST || typed.length() > LONGEST) {
			return null;
		}
		String best = null;
		double bestCost = limit(typed.length());
		Set<String> tried = new HashSet<>();
		for (int deletion : deletions(typed)) {
			for (int at = firstOf(deletion); at < this.byDeletion.length && isOf(deletion, at); at++) {
				String meant = this.words[(int) (this.byDeletion[at] & LOWER_HALF)];
				double cost = tried.add(meant) ? SlipCost.of(typed, meant, bestCost) : Double.MAX_VALUE;
				if (cost < bestCost || (cost == bestCost && best != null && meant.compareTo(best) < 0)) {
					best = meant;
					bestCost = cost;
				}
			}
		}
		return best;
	}

	/** The most that a repair may cost; just above it is refused. */
	private static double limit(int length) {
		if (length == SHORTEST) {
			return 0.55;
		}
		return (length < 5) ? 0.95 : (length < TWO_SLIPS) ? 1.15 : 1.75;
	}

	private int firstOf(int deletion) {
		int at = Arrays.binarySearch(this.byDeletion, entry(deletion, 0));
		return (at < 0) ? -at - 1 : at;
	}

	private boolean isOf(int deletion, int at) {
		return (int) (this.byDeletion[at] >> Integer.SIZE) == deletion;
	}

	/**
	 * The hashes of a word, of the word without each letter and, if it is long, without
	 * each two. Two that share a hash cost a comparison more and change nothing else.
	 */
	private static int[] deletions(String word) {
		int length = word.length();
		boolean two = length >= TWO_SLIPS - 1;
		int[] hashes = new int[1 + length + (two ? length * (length - 1) / 2 : 0)];
		int size = 0;
		for (int gap = 0; gap <= length; gap++) {
			hashes[size++] = hash(word, gap, length);
			for (int other = gap + 1; two && other < length; other++) {
				hashes[size++] = hash(word, gap, other);
			}
		}
		return hashes;
	}

	/** A gap at the word's length leaves nothing out. */
	private static int hash(String word, int gap, int otherGap) {
		int hash = 0;
		for (int at = 0; at < word.length(); at++) {
			if (at != gap && at != otherGap) {
				hash = 31 * hash + word.charAt(at);
			}
		}
		return hash;
	}

}
