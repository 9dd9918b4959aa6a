package measuredwalk.reading.amount;

import java.util.ArrayList;
import java.util.List;

import measuredwalk.reading.quantity.Amount;
import measuredwalk.reading.quantity.BareNumber;
import measuredwalk.reading.quantity.Duration;
import measuredwalk.reading.quantity.Quantity;
import measuredwalk.reading.words.Words;

/**
 * The walks of a message while its amounts are added: new walks, or parts of the last.
 */
final class WalkDrafts {

	/** More walks a day than this were never meant. */
	private static final int MOST_WALKS = 6;

	/** 'twenty minutes I think, maybe twenty five'. */
	private static final int MOST_WORDS_BETWEEN = 3;

	/** Minutes below which a length of time beside a walk is a pause. */
	private static final int LONGEST_MOMENT = 3;

	private static final int SHORTEST_BESIDE_MOMENTS = 5;

	private static final int NOWHERE = Integer.MAX_VALUE;

	private final Words words;

	private final Neighbours near;

	private final RoleCues cues;

	private final List<WalkDraft> drafts = new ArrayList<>();

	/** The first leg of a walk whose way back is still to come. */
	private int outwardFrom = NOWHERE;

	WalkDrafts(Words words, Neighbours near, RoleCues cues) {
		this.words = words;
		this.near = near;
		this.cues = cues;
	}

	List<WalkDraft> all() {
		return this.drafts;
	}

	/** '14 minutes (07:31 to 07:45)' is told twice, but walked once. */
	void addTimed(WalkDraft draft) {
		boolean told = !this.drafts.isEmpty() && last().start == null
				&& Math.abs(last().minutes().value() - draft.minutes().value()) <= 1;
		if (told) {
			last().start = draft.start;
		}
		else {
			this.drafts.add(draft);
		}
	}

	void add(Placed placed) {
		Amount minutes = minutes(placed.quantity());
		boolean wayBack = this.outwardFrom < this.drafts.size() && this.cues.has("return", placed);
		if (wayBack) {
			joinFrom(this.outwardFrom, minutes);
			this.outwardFrom = NOWHERE;
			return;
		}
		if (this.cues.after("outward", placed) && this.outwardFrom == NOWHERE) {
			this.outwardFrom = this.drafts.size();
		}
		if (!this.drafts.isEmpty() && (isAdded(placed) || isContinued(placed))) {
			replaceLast(last().plus(minutes).upTo(placed));
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

	/** '5 to the park, 15 in it, 5 home' is one walk. */
	private void joinFrom(int first, Amount minutes) {
		WalkDraft sum = this.drafts.get(first).plus(minutes);
		for (int leg = this.drafts.size() - 1; leg > first; leg--) {
			sum = sum.plus(this.drafts.remove(leg).minutes());
		}
		this.drafts.set(first, sum);
	}

	/** '10 + 10' is one walk in two parts, unless it is said to be two walks. */
	private boolean isAdded(Placed placed) {
		int before = placed.quantity().span().firstToken() - 1;
		String sign = (before < 0) ? "" : this.words.tokens().get(before).word();
		return (sign.equals("+") || sign.equals("plus")) && before == last().placed().quantity().span().lastToken() + 1
				&& this.cues.of("several").isEmpty();
	}

	/** '15 then another 10 after a sit', 'fifteen out, a rest, ten home'. */
	private boolean isContinued(Placed placed) {
		boolean more = this.cues.before("another", placed) || this.words.is(placed.from(), "another")
				|| this.cues.after("return", placed);
		return more && timesOf(placed) == 1 && this.cues.of("several").isEmpty();
	}

	/** '10 more' behind a walk that was told. */
	boolean continueBy(Placed placed) {
		boolean more = !this.drafts.isEmpty() && this.cues.has("another", placed) && this.cues.of("several").isEmpty();
		if (more) {
			replaceLast(last().plus(minutes(placed.quantity())).upTo(placed));
		}
		return more;
	}

	/** 'an hour, give or take ten minutes'. */
	void spread(Placed placed) {
		if (this.drafts.isEmpty()) {
			add(placed);
		}
		else {
			double by = minutes(placed.quantity()).value();
			double middle = last().minutes().value();
			replaceLast(new WalkDraft(Amount.between(Math.max(0, middle - by), middle + by), last().placed()));
		}
	}

	/** 'gave him a minute', 'stood for two': beside a walk such a moment is none. */
	void dropMoments() {
		if (this.drafts.stream().anyMatch((draft) -> draft.minutes().value() >= SHORTEST_BESIDE_MOMENTS)) {
			this.drafts.removeIf((draft) -> draft.minutes().value() < LONGEST_MOMENT);
		}
	}

	/** '20 this morning and same again tonight'. */
	void repeat() {
		boolean again = this.drafts.size() == 1
				&& this.cues.between("same-again", last().placed().to(), this.words.size());
		if (again) {
			this.drafts.add(new WalkDraft(last().minutes(), last().placed()));
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
		boolean guessed = this.cues.before("guess", placed) || this.words.is(placed.from(), "maybe");
		if (guessed && placed.from() - last().placed().to() <= MOST_WORDS_BETWEEN
				&& !this.words.is(placed.from() - 1, "then")) {
			return true;
		}
		boolean guessedBehind = (this.words.is(placed.to(), "maybe") || this.words.is(placed.to() - 1, "most")
				|| this.words.is(placed.to() - 1, "tops") || this.words.is(placed.to() - 1, "max"))
				&& this.cues.of("several").isEmpty() && placed.from() - last().placed().to() <= MOST_WORDS_BETWEEN;
		if (guessedBehind) {
			return true;
		}
		return this.words.markBefore(placed.to()) == '?' && placed.from() - last().placed().from() <= 3
				&& this.words.markBefore(placed.from()) == '?';
	}

	private int timesOf(Placed placed) {
		int told = (placed.quantity() instanceof Duration duration) ? duration.times()
				: (placed.quantity() instanceof BareNumber number) ? number.times() : 1;
		if (told > 1) {
			return Math.min(told, MOST_WALKS);
		}
		if (this.cues.after("both-times", placed)) {
			return 2;
		}
		boolean each = this.cues.after("each", placed) || this.words.is(placed.to() - 1, "each")
				|| this.words.is(placed.from() - 1, "each");
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
