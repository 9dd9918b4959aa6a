package measuredwalk.reading.amount;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

import measuredwalk.reading.Question;
import measuredwalk.reading.RelativeAmount;
import measuredwalk.reading.WalkTold;
import measuredwalk.reading.context.Annotation;
import measuredwalk.reading.lexicon.Category;
import measuredwalk.reading.observation.Observation;
import measuredwalk.reading.quantity.Amount;
import measuredwalk.reading.quantity.ClockTime;
import measuredwalk.reading.quantity.Distance;
import measuredwalk.reading.quantity.OtherMeasure;
import measuredwalk.reading.quantity.Quantity;
import measuredwalk.reading.quantity.TimeRange;
import org.jspecify.annotations.Nullable;

/** Puts the walks of a message together from the numbers that tell of them. */
final class WalkBuilder {

	/** A span of the day above six hours is no walk. */
	private static final long LONGEST_SECONDS = 6 * 3600L;

	private final Annotation annotation;

	private final NumberRoles roles;

	private final RoleCues cues;

	private final WalkDrafts drafts;

	private final StartTimes starts;

	private final List<Placed> distances = new ArrayList<>();

	private @Nullable Double offset;

	private boolean measured;

	private final Question question;

	WalkBuilder(Annotation annotation, NumberRoles roles, RoleCues cues, Question question) {
		this.question = question;
		this.annotation = annotation;
		this.roles = roles;
		this.cues = cues;
		this.drafts = new WalkDrafts(annotation.words(), new Neighbours(annotation), cues);
		this.starts = new StartTimes(annotation, cues);
	}

	void add(Placed placed) {
		if (placed.quantity() instanceof Distance) {
			this.distances.add(placed);
			return;
		}
		this.drafts.add(placed);
	}

	void addTotal(Placed placed) {
		this.drafts.addTotal(placed);
	}

	void addResult(Placed placed) {
		this.drafts.addResult(placed);
	}

	void takeOff(Placed placed) {
		this.drafts.takeOff(placed);
	}

	void spread(Placed placed) {
		this.drafts.spread(placed);
	}

	void addOffset(Placed placed) {
		if (this.annotation.mentions(Category.RELATIVE).isEmpty() && this.drafts.continueBy(placed)) {
			return;
		}
		this.offset = this.roles.offset(placed);
	}

	void addTime(Placed placed) {
		Quantity quantity = placed.quantity();
		if (quantity instanceof TimeRange range && isWalk(range)) {
			WalkDraft draft = new WalkDraft(Amount.of(range.seconds() / 60.0), placed);
			draft.start = range.from().time();
			this.drafts.addTimed(draft);
		}
		else if (quantity instanceof ClockTime time) {
			this.starts.add(placed, time, this.drafts.all());
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
		Double distance = DistanceSum.of(this.distances, this.annotation.words());
		if (this.drafts.all().isEmpty()) {
			if (this.distances.size() > 1 && !this.cues.of("several").isEmpty()) {
				return this.distances.stream()
					.map((each) -> new WalkTold(null, null, null, distance(each), null, null, null))
					.toList();
			}
			if (distance != null || relative != null || this.measured) {
				return List.of(new WalkTold(null, null, null, distance, this.starts.only(), null, relative));
			}
			return cutShort(observations, onsets);
		}
		this.drafts.dropMoments();
		this.drafts.repeat();
		List<WalkTold> told = new ArrayList<>();
		for (WalkDraft draft : this.drafts.all()) {
			LocalTime begun = (draft.start != null) ? draft.start
					: (this.drafts.all().size() == 1) ? this.starts.only() : null;
			told.add(draft.told(
					isEachMeasured() ? distance(this.distances.get(told.size())) : told.isEmpty() ? distance : null,
					begun));
		}
		return told;
	}

	/** '20 min, 1.2 km this morning and 15 min, 900 m tonight'. */
	private boolean isEachMeasured() {
		return this.distances.size() > 1 && this.distances.size() == this.drafts.all().size();
	}

	private @Nullable Double distance(Placed placed) {
		return DistanceSum.of(List.of(placed), this.annotation.words());
	}

	/** For each walk the word that its length stands at, -1 where that is not known. */
	List<Integer> places(int walks) {
		List<WalkDraft> all = this.drafts.all();
		return (all.size() == walks) ? all.stream().map((draft) -> draft.placed().from()).toList()
				: Collections.nCopies(walks, -1);
	}

	/** 'at 20 he sat and I carried him': the walk was 20 minutes. */
	private List<WalkTold> cutShort(List<Observation> observations, List<Onset> onsets) {
		if (onsets.isEmpty() || observations.isEmpty()) {
			return List.of();
		}
		Onset last = onsets.get(onsets.size() - 1);
		boolean ended = this.cues.of("ended")
			.stream()
			.anyMatch((cue) -> cue.from() >= last.word() || cue.entry().has("early")
					|| this.annotation.clauses().of(cue.from()) == this.annotation.clauses().of(last.word()));
		if (!ended || last.minute() == null) {
			return List.of();
		}
		return Collections.singletonList(
				new WalkTold(last.minute(), last.minute(), last.minute(), null, this.starts.only(), null, null));
	}

}
