package measuredwalk.reading.observation;

import measuredwalk.reading.context.Annotation;
import measuredwalk.reading.lexicon.Category;
import measuredwalk.reading.lexicon.Mention;
import measuredwalk.reading.words.Words;

/** How near a qualifying phrase stands to a sign. */
final class Nearness {

	/** What the end of a clause between them counts, in words. */
	private static final int CLAUSE = 10;

	/** What an 'and' between them counts, in words. */
	private static final int ACROSS_AND = 6;

	/** The longest place that comes as an afterthought, in words. */
	private static final int MOST_AFTERTHOUGHT = 4;

	private final Annotation annotation;

	private final Words words;

	Nearness(Annotation annotation) {
		this.annotation = annotation;
		this.words = annotation.words();
	}

	/** Words between, where a clause end counts as ten and two of them are too far. */
	int distance(Mention sign, Mention mention) {
		if (sign.overlaps(mention)) {
			return 0;
		}
		int clauses = Math
			.abs(this.annotation.clauses().of(sign.from()) - this.annotation.clauses().of(mention.from()));
		if (clauses > 1 && !isFragment(mention, sign)) {
			return Integer.MAX_VALUE;
		}
		int between = (mention.from() >= sign.to()) ? mention.from() - sign.to() : sign.from() - mention.to();
		return between + clauses * CLAUSE + (isJoinedBetween(sign, mention) ? ACROSS_AND : 0);
	}

	/**
	 * 'his leg quivers when he stands, back left'; 'Stiff today. Left hind again.': the
	 * place comes as an afterthought.
	 */
	private boolean isFragment(Mention mention, Mention sign) {
		int from = mention.from();
		while (!this.words.isBreakBefore(from)) {
			from--;
		}
		int to = mention.to();
		while (!this.words.isBreakBefore(to)) {
			to++;
		}
		return to - from <= MOST_AFTERTHOUGHT && sign.to() <= from
				&& (this.annotation.clauses().sentenceOf(sign.from()) == this.annotation.clauses().sentenceOf(from)
						|| isAlone(from, to));
	}

	/** Whether some words are a sentence of their own that tells of no other sign. */
	boolean isAlone(int from, int to) {
		for (int at = from; at < to; at++) {
			Mention cover = this.annotation.coverOf(at);
			if (cover != null && cover.category() == Category.SIGN) {
				return false;
			}
		}
		return this.words.isSentenceBefore(from) && this.words.isSentenceBefore(to);
	}

	/** 'lame on the near fore and stiff behind': each place is of its own half. */
	private boolean isJoinedBetween(Mention sign, Mention mention) {
		for (int at = Math.min(sign.to(), mention.to()); at < Math.max(sign.from(), mention.from()); at++) {
			if (this.words.is(at, "and") || this.words.is(at, "with") || this.words.is(at, "plus")) {
				return true;
			}
		}
		return false;
	}

}
