package measuredwalk.reading.lexicon;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/**
 * All phrases in one tree, followed word by word. Children are found in one
 * open-addressed table of (node, symbol) pairs, so that a message is searched without
 * allocation.
 */
final class PhraseTrie {

	/** The symbol of {@link Phrase#GAP}. */
	static final int GAP = 0;

	/** The symbol of {@link Phrase#SMALL_WORDS}. */
	static final int SMALL_WORDS = 1;

	/** The longest run of words that a gap skips. */
	private static final int LONGEST_GAP = 3;

	/** The longest run of small words: 'his leg has been ever such a bit funny'. */
	private static final int MOST_SMALL_WORDS = 5;

	/** The root is no child, so its number can say that there is none. */
	private static final int NONE = 0;

	private static final int[] NOTHING = {};

	private long[] keys = new long[1 << 12];

	private int[] children = new int[1 << 12];

	/** The children of the root by their symbol, where every search begins. */
	private int[] first = new int[1 << 10];

	/** The entries that end at each node. */
	private int[][] endings = { NOTHING };

	/** Most nodes end one entry only, and many the same: these share an array. */
	private final Map<Integer, int[]> alone = new HashMap<>();

	private int nodes = 1;

	private final int barrier;

	private final int small;

	private int size;

	/**
	 * An empty trie.
	 * @param barrier the symbol of words that a gap never skips
	 * @param small the symbol of the small words, which alone {@link Phrase#SMALL_WORDS}
	 * skips
	 */
	PhraseTrie(int barrier, int small) {
		this.barrier = barrier;
		this.small = small;
	}

	/** Receives what a search finds. */
	@FunctionalInterface
	interface Found {

		void phrase(int entry, int from, int to);

	}

	/**
	 * Adds a phrase.
	 * @param symbols its words
	 * @param entry what it means
	 */
	void add(int[] symbols, int entry) {
		int node = 0;
		for (int symbol : symbols) {
			node = childOrNew(node, symbol);
		}
		this.endings[node] = with(this.endings[node], entry);
	}

	private int[] with(int[] before, int entry) {
		if (before.length == 0) {
			return this.alone.computeIfAbsent(entry, (only) -> new int[] { only });
		}
		int[] after = Arrays.copyOf(before, before.length + 1);
		after[before.length] = entry;
		return after;
	}

	/**
	 * Finds every phrase that begins at a word.
	 * @param symbols the symbols of every word of the message
	 * @param start index of the word
	 * @param limit index after the last word that a phrase may cover
	 * @param found receives what is found
	 */
	void search(int[][] symbols, int start, int limit, Found found) {
		if (start >= limit) {
			return;
		}
		for (int symbol : symbols[start]) {
			int next = (symbol < this.first.length) ? this.first[symbol] : NONE;
			if (next != NONE) {
				follow(next, symbols, start, start + 1, limit, found);
			}
		}
	}

	private void follow(int node, int[][] symbols, int start, int at, int limit, Found found) {
		for (int entry : this.endings[node]) {
			found.phrase(entry, start, at);
		}
		if (at >= limit) {
			return;
		}
		step(node, symbols, start, at, limit, found);
		skipAny(child(node, GAP), symbols, start, at, limit, found);
		skipSmall(child(node, SMALL_WORDS), symbols, start, at, limit, found);
	}

	/**
	 * A gap never skips a denial: 'rose without difficulty' is not 'rose, difficulty'.
	 */
	private void skipAny(int gap, int[][] symbols, int start, int at, int limit, Found found) {
		for (int skip = 0; gap != NONE && skip <= LONGEST_GAP && at + skip < limit; skip++) {
			step(gap, symbols, start, at + skip, limit, found);
			if (has(symbols[at + skip], this.barrier)) {
				return;
			}
		}
	}

	private void skipSmall(int gap, int[][] symbols, int start, int at, int limit, Found found) {
		for (int skip = 0; gap != NONE && skip <= MOST_SMALL_WORDS && at + skip < limit; skip++) {
			step(gap, symbols, start, at + skip, limit, found);
			if (!has(symbols[at + skip], this.small)) {
				return;
			}
		}
	}

	private static boolean has(int[] symbols, int wanted) {
		for (int symbol : symbols) {
			if (symbol == wanted) {
				return true;
			}
		}
		return false;
	}

	private void step(int node, int[][] symbols, int start, int at, int limit, Found found) {
		for (int symbol : symbols[at]) {
			int next = child(node, symbol);
			if (next != NONE) {
				follow(next, symbols, start, at + 1, limit, found);
			}
		}
	}

	private int child(int node, int symbol) {
		long key = key(node, symbol);
		int slot = slot(key);
		while (this.keys[slot] != 0) {
			if (this.keys[slot] == key) {
				return this.children[slot];
			}
			slot = (slot + 1) & (this.keys.length - 1);
		}
		return NONE;
	}

	private int childOrNew(int node, int symbol) {
		int known = child(node, symbol);
		if (known != NONE) {
			return known;
		}
		if (this.size * 2 >= this.keys.length) {
			grow();
		}
		if (this.nodes == this.endings.length) {
			this.endings = Arrays.copyOf(this.endings, this.nodes * 2);
		}
		int child = this.nodes++;
		this.endings[child] = NOTHING;
		put(key(node, symbol), child);
		if (node == 0) {
			this.first = (symbol < this.first.length) ? this.first : Arrays.copyOf(this.first, symbol * 2);
			this.first[symbol] = child;
		}
		return child;
	}

	private void grow() {
		long[] oldKeys = this.keys;
		int[] oldChildren = this.children;
		this.keys = new long[oldKeys.length * 2];
		this.children = new int[oldKeys.length * 2];
		this.size = 0;
		for (int slot = 0; slot < oldKeys.length; slot++) {
			if (oldKeys[slot] != 0) {
				put(oldKeys[slot], oldChildren[slot]);
			}
		}
	}

	private void put(long key, int child) {
		int slot = slot(key);
		while (this.keys[slot] != 0) {
			slot = (slot + 1) & (this.keys.length - 1);
		}
		this.keys[slot] = key;
		this.children[slot] = child;
		this.size++;
	}

	private int slot(long key) {
		long mixed = key * 0x9E3779B97F4A7C15L;
		return (int) (mixed >>> 40) & (this.keys.length - 1);
	}

	private static long key(int node, int symbol) {
		return ((long) (node + 1) << 32) | symbol;
	}

}
