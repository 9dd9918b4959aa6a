package measuredwalk.tolerance.simulation;

import java.time.LocalTime;
import java.util.List;
import java.util.Optional;

import measuredwalk.signs.Moment;
import measuredwalk.signs.Severity;
import measuredwalk.signs.Sign;
import measuredwalk.signs.SignKind;
import measuredwalk.tolerance.ToleranceEvent.WalkTaken;
import org.jspecify.annotations.Nullable;

/** Turns walks into what an owner tells of them. */
final class WalkAnswers {

	private static final int MOST_WALKS = 8;

	private static final List<SignKind> MILD = List.of(SignKind.SLOWING, SignKind.STIFFNESS, SignKind.SLOWING,
			SignKind.PANTING, SignKind.FATIGUE);

	private static final List<SignKind> CLEAR = List.of(SignKind.LAMENESS, SignKind.SITTING_OR_LYING_DOWN,
			SignKind.SLOWING, SignKind.LAMENESS);

	private final Household home;

	WalkAnswers(Household home) {
		this.home = home;
	}

	/**
	 * What is told of a walk, or nothing.
	 * @param walked the walk
	 * @param day its day
	 * @param number which walk of the day
	 * @return the answer
	 */
	Optional<WalkTaken> tell(Walked walked, int day, int number) {
		Luck luck = this.home.luck().on(Topic.TELLING, (long) day * MOST_WALKS + number);
		Owner owner = this.home.owner();
		boolean missed = owner.silence().missed(luck, day, walked.noticed());
		boolean late = luck.happens(owner.telling().late());
		double told = Amounts.told(walked.minutes(), owner.telling().misread(), luck);
		double width = (luck.happens(0.5)) ? 0.10 : 0;
		List<Sign> signs = signs(walked, told, luck);
		LocalTime time = luck.happens(0.6) ? LocalTime.ofSecondOfDay(Math.round(walked.hour() * 3600)) : null;
		WalkTaken taken = new WalkTaken(Household.ENROLLED.plusDays(day), time, told, told * (1 - width),
				told * (1 + width), null, signs, late);
		return missed ? Optional.empty() : Optional.of(taken);
	}

	private List<Sign> signs(Walked walked, double told, Luck luck) {
		if (walked.noticed()) {
			return List.of(sign(walked.loadOverFirstSign(), walked.noticedMinute(), walked.minutes(), told, luck));
		}
		if (luck.happens(this.home.owner().seeing().falseAlarms())) {
			return List.of(sign(1, luck.between(0, walked.minutes()), walked.minutes(), told, luck));
		}
		return luck.happens(0.3) ? List.of(Sign.denied(SignKind.LAMENESS)) : List.of();
	}

	private Sign sign(double over, double minute, double minutes, double told, Luck luck) {
		double felt = over * Math.exp(0.15 * luck.gaussian());
		Severity severity = (felt < 1.25) ? Severity.MILD : (felt < 1.65) ? Severity.MODERATE : Severity.SEVERE;
		List<SignKind> kinds = (severity == Severity.MILD) ? MILD : CLEAR;
		SignKind kind = kinds.get((int) (luck.uniform() * kinds.size()));
		boolean tellsMinute = luck.happens(this.home.owner().telling().minute());
		boolean tellsWhen = luck.happens(0.5);
		// The walk may be told shorter than it was; a sign is never told of after its
		// end.
		Double onset = tellsMinute ? (Double) Math.min(told, Amounts.rounded(minute, luck)) : null;
		Severity said = luck.happens(0.6) ? severity : null;
		return new Sign(kind, true, said, null, null, (tellsMinute || tellsWhen) ? third(minute, minutes) : null,
				onset);
	}

	private static @Nullable Moment third(double minute, double minutes) {
		return (minute < minutes / 3) ? Moment.START : (minute < minutes * 2 / 3) ? Moment.MIDDLE : Moment.END;
	}

}
