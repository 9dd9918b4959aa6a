package measuredwalk.reading.amount;

import java.time.Duration;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;

import measuredwalk.reading.Question;
import measuredwalk.reading.WalkTold;
import measuredwalk.reading.context.Annotation;
import measuredwalk.reading.lexicon.Category;
import measuredwalk.reading.lexicon.Mention;
import measuredwalk.reading.observation.Observation;
import measuredwalk.reading.quantity.ClockTime;
import measuredwalk.reading.quantity.Quantities;
import measuredwalk.reading.quantity.Quantity;
import measuredwalk.reading.quantity.TimeRange;
import measuredwalk.reading.words.Words;
import org.jspecify.annotations.Nullable;

/** Reads the walks, onsets and stiff minutes of a message. */
public final class AmountReader {

	private final Annotation annotation;

	/** Hours before this one are of the night. */
	private static final int DAWN_HOUR = 6;

	private final Question question;

	private final List<Observation> observations;

	private final RoleCues cues;

	private final NumberRoles roles;

	private final WalkBuilder walks;

	private final List<Onset> onsets = new ArrayList<>();

	private @Nullable Double stiffMinutes;

	private @Nullable Double wrongMinutes;

	private AmountReader(Annotation annotation, Question question, List<Observation> observations) {
		this.annotation = annotation;
		this.question = question;
		this.observations = observations;
		this.cues = new RoleCues(annotation);
		this.roles = new NumberRoles(annotation, this.cues, question, observations);
		this.walks = new WalkBuilder(annotation, this.roles, this.cues, question);
	}

	/**
	 * Reads the numbers of a message.
	 * @param annotation its phrases
	 * @param question what it answers
	 * @param now its own time
	 * @param observations the signs it tells
	 * @return what its numbers told
	 */
	public static Amounts read(Annotation annotation, Question question, LocalDateTime now,
			List<Observation> observations) {
		AmountReader reader = new AmountReader(annotation, question, observations);
		Words words = annotation.words();
		ClockOrMinutes clock = new ClockOrMinutes(annotation, reader.cues, question, observations, now);
		List<Placed> placed = new ArrayList<>();
		for (Quantity quantity : Quantities.in(words.tokens(), now)) {
			int from = words.firstFrom(quantity.span().firstToken());
			int to = words.firstFrom(quantity.span().lastToken() + 1);
			placed.add(new Placed(clock.meant(quantity, from, to), from, to));
		}
		return reader.read(placed, observations);
	}

	private Amounts read(List<Placed> placed, List<Observation> observations) {
		Corrections corrections = new Corrections(placed, this.annotation.words(), this.cues);
		this.roles.among(placed, corrections.amounts() == 1);
		Role corrected = Role.NONE;
		for (Placed each : placed) {
			boolean wrong = corrections.isWrong(each);
			Role role = this.roles.of(each);
			boolean instead = corrected == Role.ONSET && role == Role.WALK;
			take(each, wrong ? Role.WRONG : instead ? Role.ONSET : role);
			corrected = wrong ? role : Role.NONE;
		}
		if (this.stiffMinutes == null && this.roles.isStiffMorning()) {
			this.stiffMinutes = RisingTimes.minutesBetween(placed, this.cues);
		}
		List<WalkTold> told = this.walks.walks(observations, this.onsets);
		for (Placed each : placed) {
			if (each.quantity() instanceof ClockTime time) {
				addClockOnset(each, time, told);
			}
		}
		addParts(told);
		boolean noWalk = told.isEmpty() && this.question == Question.WALK
				&& !this.annotation.mentions(Category.NO_WALK).isEmpty();
		return new Amounts(told, this.onsets, this.stiffMinutes, noWalk, this.wrongMinutes, nightWords(placed),
				this.walks.places(told.size()));
	}

	/** 'two thirds of the way round' of a walk whose length is known. */
	private void addParts(List<WalkTold> told) {
		Double length = (told.size() == 1) ? told.get(0).minutes() : null;
		for (Mention moment : this.annotation.mentions(Category.MOMENT)) {
			String part = moment.entry().flag("fraction");
			if (length != null && part != null) {
				this.onsets.add(new Onset(moment.from(), length * Double.parseDouble(part), null));
			}
		}
	}

	private List<Integer> nightWords(List<Placed> placed) {
		List<Integer> words = new ArrayList<>();
		for (Placed each : placed) {
			LocalTime time = (each.quantity() instanceof ClockTime clock) ? clock.said()
					: (each.quantity() instanceof TimeRange range) ? range.from().said() : null;
			if (time != null && this.question == Question.MORNING && time.getHour() < DAWN_HOUR) {
				words.add(each.from());
			}
		}
		return words;
	}

	/**
	 * 'left 7.55, back 8.20, limped from 8.10': minutes from the start of the only walk.
	 */
	private void addClockOnset(Placed placed, ClockTime time, List<WalkTold> told) {
		if (told.size() != 1 || told.get(0).start() == null || told.get(0).minutes() == null
				|| !isBesideSign(placed.from())) {
			return;
		}
		double minute = Duration.between(told.get(0).start(), time.time()).toMinutes();
		if (minute > 0 && minute <= told.get(0).minutes()) {
			this.onsets.add(new Onset(placed.from(), minute, null));
		}
	}

	private boolean isBesideSign(int word) {
		return this.observations.stream()
			.anyMatch((
					seen) -> this.annotation.clauses().of(seen.mention().from()) == this.annotation.clauses().of(word));
	}

	private void take(Placed placed, Role role) {
		switch (role) {
			case WALK -> this.walks.add(placed);
			case RESULT -> this.walks.addResult(placed);
			case SPREAD -> this.walks.spread(placed);
			case MINUS -> this.walks.takeOff(placed);
			case TOTAL -> this.walks.addTotal(placed);
			case OFFSET -> this.walks.addOffset(placed);
			case ONSET -> this.onsets.add(new Onset(placed.from(), NumberRoles.minutes(placed.quantity()), null));
			case FROM_END -> this.onsets.add(new Onset(placed.from(), null, NumberRoles.minutes(placed.quantity())));
			case STIFFNESS -> this.stiffMinutes = (this.stiffMinutes == null) ? NumberRoles.minutes(placed.quantity())
					: this.stiffMinutes;
			case WRONG -> this.wrongMinutes = NumberRoles.minutes(placed.quantity());
			case NONE -> this.walks.addTime(placed);
		}
	}

}
