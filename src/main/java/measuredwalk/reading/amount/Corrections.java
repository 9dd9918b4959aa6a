package measuredwalk.reading.amount;

import java.util.List;

import measuredwalk.reading.quantity.BareNumber;
import measuredwalk.reading.quantity.Duration;
import measuredwalk.reading.words.Words;

/**
 * Numbers that are said to be wrong: '15 not 50', 'not fifteen, fifty', '45. sorry, 35'.
 */
final class Corrections {

	/** Words between a number and the one put in its place, where a cue stands. */
	private static final int MOST_WORDS = 5;

	/** The same where the cue stands right behind the wrong number. */
	private static final int MOST_WORDS_AFTER_CUE = 10;

	private final List<Placed> amounts;

	private final Words words;

	private final RoleCues cues;

	Corrections(List<Placed> placed, Words words, RoleCues cues) {
		this.amounts = placed.stream().filter(Corrections::isAmount).toList();
		this.words = words;
		this.cues = cues;
	}

	int amounts() {
		return this.amounts.size();
	}

	boolean isWrong(Placed placed) {
		int at = this.amounts.indexOf(placed);
		if (at < 0) {
			return false;
		}
		boolean first = at == 0 || !this.cues.before("wrong-told", this.amounts.get(at - 1));
		boolean old = first && this.cues.before("wrong-told", placed) && !this.words.is(placed.to(), "not");
		return old || (this.amounts.size() > 1 && (this.cues.before("wrong", placed)
				|| (at + 1 < this.amounts.size() && isTakenBack(placed, at + 1))));
	}

	private static boolean isAmount(Placed placed) {
		return placed.quantity() instanceof Duration || placed.quantity() instanceof BareNumber;
	}

	/** Between this number and the next stands a word that takes it back. */
	private boolean isTakenBack(Placed placed, int nextAmount) {
		Placed next = this.amounts.get(nextAmount);
		if (this.cues.before("wrong", next)) {
			return false;
		}
		int gap = next.from() - placed.to();
		boolean soon = this.cues.of("corrected")
			.stream()
			.anyMatch((cue) -> cue.from() >= placed.to() && cue.to() <= next.from()
					&& (gap <= MOST_WORDS || (cue.from() == placed.to() && gap <= MOST_WORDS_AFTER_CUE)));
		return soon || (gap == 1 && this.cues.between("corrected-alone", placed.to(), next.from()));
	}

}
