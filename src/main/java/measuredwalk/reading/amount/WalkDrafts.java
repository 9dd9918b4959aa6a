package measuredwalk.reading.amount;

import java.util.ArrayList;
import java.util.List;

import measuredwalk.reading.quantity.Amount;
import measuredwalk.reading.quantity.BareNumber;
import measuredwalk.reading.quantity.Duration;
import measuredwalk.reading.quantity.Quantity;
import measuredwalk.reading.words.Words;

/** The walks of a message while its amounts are added: new walks, or parts of the last. */
final class WalkDrafts {

	/** More walks a day than this were never meant. */
	private static final int MOST_WALKS = 6;

	private final Words words;

	private final Neighbours near;

	private final RoleCues cues;

	private final List<WalkDraft> drafts = new ArrayList<>();

	private boolean outward;

	WalkDrafts(Words words, Neighbours near, RoleCues cues) {
		this.words = words;
		this.near = near;
		this.cues = cues;
	}

	List<WalkDraft> all() {
		return this.drafts;
	}

	void add(WalkDraft draft) {
		this.drafts.add(draft);
	}

	void add(Placed placed) {
		Amount minutes = minutes(placed.quantity());
		boolean wayBack = this.outward && this.cues.has("return", placed);
		this.outward = this.cues.after("outward", placed);
		if (!this.drafts.isEmpty() && wayBack) {
			replaceLast(last().plus(minutes));
		}
		else if (!this.drafts.isEmpty() && isSecondGuess(placed)) {
			replaceLast(last().or(minutes));
		}
		else {
			double factor = isEachWay(placed) ? 2 : 1;
			for (int count = timesOf(placed); count > 0; count--) {
				this.drafts.add(new WalkDraft(minutes.times(factor), placed));
			}
		}
	}

	/** '25 all in': the parts that were told before are no walks of their own. */
	void addTotal(Placed placed) {
		this.drafts.clear();
		add(placed);
	}

	/** '15 each way so 30': the sum of what its sentence told. */
	void addResult(Placed placed) {
		this.drafts.removeIf((draft) -> this.near.sentence(draft.placed()) == this.near.sentence(placed));
		add(placed);
	}

	/** 'an hour less ten'. */
	void takeOff(Placed placed) {
		if (!this.drafts.isEmpty()) {
			replaceLast(last().plus(Amount.of(-minutes(placed.quantity()).value())));
		}
	}

	WalkDraft last() {
		return this.drafts.get(this.drafts.size() - 1);
	}

	private void replaceLast(WalkDraft draft) {
		this.drafts.set(this.drafts.size() - 1, draft);
	}

	/** '40? 45?' is one walk, not quite known. */
	private boolean isSecondGuess(Placed placed) {
		return this.words.markBefore(placed.to()) == '?' && placed.from() - last().placed().from() <= 3
				&& this.words.markBefore(placed.from()) == '?';
	}

	private int timesOf(Placed placed) {
		int told = (placed.quantity() instanceof Duration duration) ? duration.times()
				: (placed.quantity() instanceof BareNumber number) ? number.times() : 1;
		if (told > 1) {
			return Math.min(told, MOST_WALKS);
		}
		boolean each = this.cues.after("each", placed) || this.words.is(placed.to() - 1, "each");
		return (!each || isEachWay(placed)) ? 1 : TimesTold.before(placed.from(), this.words);
	}

	private boolean isEachWay(Placed placed) {
		return this.cues.after("each-way", placed);
	}

	private static Amount minutes(Quantity quantity) {
		if (quantity instanceof Duration duration) {
			return duration.seconds().times(1 / 60.0);
		}
		return ((BareNumber) quantity).amount();
	}

}
