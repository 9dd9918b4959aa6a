package measuredwalk.reading.amount;

import java.util.List;

import measuredwalk.reading.Question;
import measuredwalk.reading.context.Annotation;
import measuredwalk.reading.observation.Observation;
import measuredwalk.reading.quantity.BareNumber;
import measuredwalk.reading.quantity.Distance;
import measuredwalk.reading.quantity.Duration;
import measuredwalk.reading.quantity.Quantity;
import measuredwalk.reading.words.Words;
import measuredwalk.signs.SignKind;

/**
 * Finds the part that a number plays. Any length of time in a message about a walk is the
 * walk's, unless a cue gives it another part.
 */
final class NumberRoles {

	/** 'a foot of snow' is no walk. */
	private static final double LEAST_METRES = 5;

	/** 'Half the night': as long is no walk but a time since. */
	private static final double MOST_SECONDS = 12 * 3600.0;

	/** Out of the blue, less than this is seldom a walk. */
	private static final double FEWEST_UNASKED = 5;

	private static final int LAST_HOUR = 12;

	private final Words words;

	private final Neighbours near;

	private final RoleCues cues;

	private final Question question;

	private final List<Observation> observations;

	private final NotWalked notWalked;

	private final OnsetRoles onsets;

	private final StiffnessRoles stiffness;

	private final BareAnswers bareAnswers;

	private final LooseNumbers loose;

	private boolean only;

	NumberRoles(Annotation annotation, RoleCues cues, Question question, List<Observation> observations) {
		this.words = annotation.words();
		this.near = new Neighbours(annotation);
		this.cues = cues;
		this.question = question;
		this.observations = observations;
		this.notWalked = new NotWalked(annotation, cues, question, !observations.isEmpty());
		this.onsets = new OnsetRoles(annotation, cues, observations);
		this.stiffness = new StiffnessRoles(annotation, cues, question, observations);
		this.bareAnswers = new BareAnswers(annotation, cues);
		this.loose = new LooseNumbers(annotation, cues);
	}

	/**
	 * To be told once.
	 * @param placed everything that was found
	 * @param one whether there is only one amount, which yesterday's then may be
	 */
	void among(List<Placed> placed, boolean one) {
		this.loose.among(placed);
		this.only = one;
	}

	Role of(Placed placed) {
		Quantity quantity = placed.quantity();
		if (quantity instanceof Distance distance) {
			boolean walked = distance.metres().value() >= LEAST_METRES;
			return (!walked || this.notWalked.has(placed, this.only) || this.onsets.isPlace(placed)) ? Role.NONE
					: Role.WALK;
		}
		if (quantity instanceof Duration duration) {
			double seconds = duration.seconds().value();
			boolean moment = seconds == 60
					&& (this.words.is(placed.from(), "a") || this.words.is(placed.from(), "first"));
			return (moment || seconds < 60 || seconds >= MOST_SECONDS) ? Role.NONE : timed(placed);
		}
		return (quantity instanceof BareNumber number && isMinutes(number, placed)) ? timed(placed) : Role.NONE;
	}

	private boolean isMinutes(BareNumber number, Placed placed) {
		if (!BareAnswers.mayBeMinutes(number.amount().value()) || isHourOfSettingOut(number, placed)
				|| isEaten(placed)) {
			return false;
		}
		return switch (this.question) {
			case MORNING -> this.stiffness.has(placed) && !this.bareAnswers.counts(placed);
			case ANY -> this.onsets.isTold(placed) || (isWalkNear(placed) || this.bareAnswers.isCorrected(placed))
					&& this.bareAnswers.isAnswer(placed);
			case WALK -> this.onsets.isTold(placed) || this.onsets.of(placed) != null
					|| (this.bareAnswers.isAnswer(placed) && !this.loose.has(placed));
		};
	}

	/** 'at her grapes, maybe ten': how many were eaten. */
	private boolean isEaten(Placed placed) {
		return this.observations.stream()
			.anyMatch((seen) -> seen.sign().kind() == SignKind.TOXIN_INGESTION
					&& this.near.sentence(placed) == this.near.sentence(seen) && !this.cues.before("taken", placed));
	}

	/** 'got him out about seven and did fifteen minutes'. */
	private boolean isHourOfSettingOut(BareNumber number, Placed placed) {
		boolean about = this.words.is(placed.from(), "about") || this.words.is(placed.from(), "around");
		return !this.only && about && number.amount().value() <= LAST_HOUR && this.cues.before("set-out", placed);
	}

	private Role timed(Placed placed) {
		if (this.cues.over("minus", placed)) {
			return Role.MINUS;
		}
		if (this.cues.before("spread", placed)) {
			return Role.SPREAD;
		}
		if (this.cues.has("more", placed) || this.cues.has("less", placed)) {
			return Role.OFFSET;
		}
		if (this.notWalked.has(placed, this.only)) {
			return Role.NONE;
		}
		if (this.stiffness.has(placed)) {
			return Role.STIFFNESS;
		}
		boolean whole = this.cues.has("total", placed)
				|| ((this.question == Question.MORNING || this.only) && this.near.isWalked(placed));
		Role onset = whole ? null : this.onsets.of(placed);
		if (onset != null) {
			return onset;
		}
		return (!this.only && isBesideTheWalk(placed)) ? Role.NONE : walked(placed);
	}

	/**
	 * Beside the walk's own length: 'panting for an hour', 'asleep by 8', 'at 15 a deer'.
	 */
	private boolean isBesideTheWalk(Placed placed) {
		boolean minute = placed.quantity() instanceof BareNumber && this.cues.before("by-then", placed);
		boolean adjunct = this.cues.before("adjunct", placed) && !this.cues.after("walk-noun", placed);
		return minute || adjunct || isOfSign(placed) || this.onsets.isMoment(placed);
	}

	private Role walked(Placed placed) {
		boolean total = this.cues.has("total", placed);
		if (this.question != Question.WALK && !total && !isWalkTold(placed)) {
			return Role.NONE;
		}
		if (this.cues.after("share", placed)) {
			return Role.NONE;
		}
		return total ? Role.TOTAL : this.cues.before("result", placed) ? Role.RESULT : Role.WALK;
	}

	/** Out of the blue a length of time is a walk's only when a walk is told of. */
	private boolean isWalkTold(Placed placed) {
		if (this.question == Question.ANY && this.near.isAsked(placed)) {
			return false;
		}
		if (minutes(placed.quantity()) < BareAnswers.FEWEST_MINUTES) {
			return false;
		}
		if (isWalkNear(placed) || this.bareAnswers.isCorrected(placed)) {
			return true;
		}
		return this.question == Question.ANY && !isOfSign(placed)
				&& this.observations.stream().noneMatch(Observation::urgent)
				&& !(placed.quantity() instanceof BareNumber) && minutes(placed.quantity()) >= FEWEST_UNASKED;
	}

	/** 'licked his paw for 20 minutes'. */
	private boolean isOfSign(Placed placed) {
		return this.words.is(placed.from() - 1, "for") && this.observations.stream()
			.anyMatch((seen) -> this.near.clause(placed) == this.near.clause(seen) && seen.sign().present()
					&& seen.mention().from() < placed.from());
	}

	/** Whether stiffness is told of in answer to how the dog is in the morning. */
	boolean isStiffMorning() {
		return this.stiffness.isStiffMorning();
	}

	private boolean isWalkNear(Placed placed) {
		return this.near.isWalkInSentence(placed);
	}

	static double minutes(Quantity quantity) {
		if (quantity instanceof Duration duration) {
			return duration.seconds().value() / 60;
		}
		return (quantity instanceof BareNumber number) ? number.amount().value() : Double.NaN;
	}

	/** So many minutes longer, or below zero shorter. */
	double offset(Placed placed) {
		double minutes = minutes(placed.quantity());
		return this.cues.has("less", placed) ? -minutes : minutes;
	}

}
