package measuredwalk.reading.gloss;

import java.util.ArrayList;
import java.util.List;

import org.jspecify.annotations.Nullable;

/** Fits a phrase to words, and keeps what its places hold. */
final class PhraseMatch {

	/**
	 * Where a phrase fits.
	 *
	 * @param end index after its last word
	 * @param kept from and to of each thing kept
	 */
	record Fit(int end, List<int[]> kept) {
	}

	private final List<Word> words;

	private final List<Piece> pieces;

	private final List<int[]> kept = new ArrayList<>();

	private PhraseMatch(List<Word> words, List<Piece> pieces) {
		this.words = words;
		this.pieces = pieces;
	}

	static @Nullable Fit of(List<Word> words, int from, List<Piece> pieces) {
		PhraseMatch match = new PhraseMatch(words, pieces);
		int end = match.fit(from, 0);
		return (end < 0) ? null : new Fit(end, List.copyOf(match.kept));
	}

	/** Phrases are a few pieces long, so going back a step costs little. */
	private int fit(int at, int piece) {
		if (piece == this.pieces.size()) {
			return at;
		}
		Piece here = this.pieces.get(piece);
		return switch (here.kind()) {
			case EDGE -> isEdge(at) ? fit(at, piece + 1) : -1;
			case BETWEEN -> between(at, piece, here);
			case FIGURE, MINUTE -> isFitting(at, here) ? keeping(at, at + 1, piece) : -1;
			case ONE_OF, ACCENTED -> isFitting(at, here) ? fit(at + 1, piece + 1) : -1;
		};
	}

	private int between(int at, int piece, Piece between) {
		for (int count = 0; count <= between.most(); count++) {
			int end = keeping(at, at + count, piece);
			if (end >= 0) {
				return end;
			}
			if (!isFitting(at + count, between)) {
				return -1;
			}
		}
		return -1;
	}

	private int keeping(int from, int to, int piece) {
		this.kept.add(new int[] { from, to });
		int size = this.kept.size();
		int end = fit(to, piece + 1);
		if (end < 0) {
			while (this.kept.size() >= size) {
				this.kept.remove(this.kept.size() - 1);
			}
		}
		return end;
	}

	private boolean isFitting(int at, Piece piece) {
		return at < this.words.size() && piece.fits(this.words.get(at));
	}

	private boolean isEdge(int at) {
		return at <= 0 || at >= this.words.size() || this.words.get(at).isMark() || this.words.get(at - 1).isMark();
	}

}
