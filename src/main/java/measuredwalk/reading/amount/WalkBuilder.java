package measuredwalk.reading.amount;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;

import measuredwalk.reading.Question;
import measuredwalk.reading.RelativeAmount;
import measuredwalk.reading.WalkTold;
import measuredwalk.reading.context.Annotation;
import measuredwalk.reading.observation.Observation;
import measuredwalk.reading.quantity.Amount;
import measuredwalk.reading.quantity.BareNumber;
import measuredwalk.reading.quantity.ClockTime;
import measuredwalk.reading.quantity.Distance;
import measuredwalk.reading.quantity.Duration;
import measuredwalk.reading.quantity.OtherMeasure;
import measuredwalk.reading.quantity.Quantity;
import measuredwalk.reading.quantity.TimeRange;
import measuredwalk.reading.words.Words;
import org.jspecify.annotations.Nullable;

/** Puts the walks of a message together from the numbers that tell of them. */
final class WalkBuilder {

	/** Two distances in one message are one walk there and back, or its parts. */
	private static final Set<String> WENT = Set.of("left", "went", "set", "out", "started", "walked", "at", "about",
			"around", "from", "leaving", "off");

	/** A span of the day above six hours is no walk. */
	private static final long LONGEST_SECONDS = 6 * 3600L;

	private static final Set<String> WALKED = Set.of("went", "walk", "walked", "left", "out", "stroll", "wander");

	private static final Set<String> ENDED = Set.of("carry", "carried", "home", "turned", "gave", "budge", "move",
			"stopped", "wouldn't", "refused");

	private final Annotation annotation;

	private final Words words;

	private final NumberRoles roles;

	private final List<WalkDraft> drafts = new ArrayList<>();

	private final List<Placed> distances = new ArrayList<>();

	private @Nullable Double offset;

	private @Nullable LocalTime start;

	private boolean measured;

	private final Question question;

	WalkBuilder(Annotation annotation, NumberRoles roles, Question question) {
		this.question = question;
		this.annotation = annotation;
		this.words = annotation.words();
		this.roles = roles;
	}

	void add(Placed placed) {
		Quantity quantity = placed.quantity();
		if (quantity instanceof Distance) {
			this.distances.add(placed);
			return;
		}
		if (isWayBack(placed)) {
			this.drafts.set(this.drafts.size() - 1, this.drafts.get(this.drafts.size() - 1).plus(minutes(quantity)));
			return;
		}
		if (isSecondGuess(placed)) {
			this.drafts.set(this.drafts.size() - 1, this.drafts.get(this.drafts.size() - 1).or(minutes(quantity)));
			return;
		}
		int times = timesOf(placed);
		double factor = isEachWay(placed) ? 2 : 1;
		for (int count = 0; count < times; count++) {
			this.drafts.add(new WalkDraft(minutes(quantity).times(factor), placed.from()));
		}
	}

	/** '15 min there and 15 back' is one walk of 30. */
	private boolean isWayBack(Placed placed) {
		return !this.drafts.isEmpty() && this.words.is(placed.to(), "back")
				&& (this.words.is(placed.from() - 2, "there") || this.words.is(placed.from() - 2, "out")
						|| this.words.is(placed.from() - 1, "out"));
	}

	/** '40? 45?' is one walk, not quite known. */
	private boolean isSecondGuess(Placed placed) {
		return !this.drafts.isEmpty() && this.words.markBefore(placed.to()) == '?'
				&& placed.from() - this.drafts.get(this.drafts.size() - 1).word <= 3
				&& this.words.markBefore(placed.from()) == '?';
	}

	void addTotal(Placed placed) {
		this.drafts.clear();
		add(placed);
	}

	void addOffset(Placed placed) {
		this.offset = this.roles.offset(placed);
	}

	void addTime(Placed placed) {
		Quantity quantity = placed.quantity();
		if (quantity instanceof TimeRange range && isWalk(range)) {
			WalkDraft draft = new WalkDraft(Amount.of(range.seconds() / 60.0), placed.from());
			draft.start = range.from().time();
			this.drafts.add(draft);
		}
		else if (quantity instanceof ClockTime time && !time.bare() && isOfLastWalk(placed)) {
			this.drafts.get(this.drafts.size() - 1).start = time.time();
		}
		else if (quantity instanceof ClockTime time && isStart(time, placed)) {
			this.start = time.time();
		}
		else if (quantity instanceof OtherMeasure measure && measure.unit().startsWith("block")) {
			this.measured = true;
		}
	}

	private boolean isWalk(TimeRange range) {
		return this.question != Question.MORNING && range.seconds() <= LONGEST_SECONDS;
	}

	List<WalkTold> walks(List<Observation> observations, List<Onset> onsets) {
		RelativeAmount relative = new RelativeReader(this.annotation, this.offset).read(this.question);
		Double distance = DistanceSum.of(this.distances, this.words);
		if (this.drafts.isEmpty()) {
			if (distance != null || relative != null || this.measured) {
				return List.of(new WalkTold(null, null, null, distance, this.start, null, relative));
			}
			return cutShort(observations, onsets);
		}
		List<WalkTold> told = new ArrayList<>();
		for (WalkDraft draft : this.drafts) {
			LocalTime begun = (draft.start != null) ? draft.start : this.drafts.size() == 1 ? this.start : null;
			told.add(draft.told(told.isEmpty() ? distance : null, begun));
		}
		return told;
	}

	/** 'at 20 he sat and I carried him': the walk was 20 minutes. */
	private List<WalkTold> cutShort(List<Observation> observations, List<Onset> onsets) {
		if (onsets.isEmpty() || observations.isEmpty()) {
			return List.of();
		}
		Onset last = onsets.get(onsets.size() - 1);
		for (int at = last.word(); at < this.words.size(); at++) {
			if (ENDED.contains(this.words.form(at)) && last.minute() != null) {
				return Collections.singletonList(
						new WalkTold(last.minute(), last.minute(), last.minute(), null, this.start, null, null));
			}
		}
		return List.of();
	}

	/** '12 minutes at 08:00'. */
	private boolean isOfLastWalk(Placed placed) {
		return !this.drafts.isEmpty() && this.words.is(placed.from() - 1, "at")
				&& placed.from() - this.drafts.get(this.drafts.size() - 1).word <= 4;
	}

	private boolean isStart(ClockTime time, Placed placed) {
		Neighbours near = new Neighbours(this.annotation);
		boolean went = near.before(placed, WENT, 1) || (!time.bare() && near.inClause(placed, WALKED));
		boolean byBare = time.bare() && !this.words.is(placed.from() - 2, "left");
		return went && !byBare && this.start == null;
	}

	private int timesOf(Placed placed) {
		int told = (placed.quantity() instanceof Duration duration) ? duration.times()
				: (placed.quantity() instanceof BareNumber number) ? number.times() : 1;
		if (told > 1) {
			return Math.min(told, 6);
		}
		boolean each = this.words.is(placed.to(), "each") || this.words.is(placed.to() - 1, "each")
				|| this.words.is(placed.to(), "apiece")
				|| (this.words.is(placed.to(), "a") && this.words.is(placed.to() + 1, "time"));
		if (!each || isEachWay(placed)) {
			return 1;
		}
		return TimesTold.before(placed.from(), this.words);
	}

	private boolean isEachWay(Placed placed) {
		return this.words.is(placed.to(), "each") && this.words.is(placed.to() + 1, "way");
	}

	private static Amount minutes(Quantity quantity) {
		if (quantity instanceof Duration duration) {
			return duration.seconds().times(1 / 60.0);
		}
		return ((BareNumber) quantity).amount();
	}

}
