package measuredwalk.tolerance.simulation;

import java.util.List;
import java.util.Optional;

import measuredwalk.signs.Overall;
import measuredwalk.signs.Severity;
import measuredwalk.signs.Sign;
import measuredwalk.signs.SignKind;
import measuredwalk.tolerance.ToleranceEvent.MorningSeen;
import org.jspecify.annotations.Nullable;

/** Turns how a dog wakes up into what its owner tells of it. */
final class MorningAnswers {

	private final Household home;

	MorningAnswers(Household home) {
		this.home = home;
	}

	/**
	 * The chance that yesterday's load or the soreness of the night makes it stiff: load
	 * and soreness are two causes of which each is enough. A log-logistic law of the load
	 * with its middle a little above the tolerance, so that a walk just over often passes
	 * without a stiff morning.
	 * @param loadRatio yesterday's greatest load over the tolerance
	 * @param sorenessShift log of tolerance lost to irritation and flare
	 * @return the chance
	 */
	static double stiffChance(double loadRatio, double sorenessShift) {
		double byLoad = 0.8 / (1 + Math.pow(Math.max(loadRatio, 1e-9) / 1.10, -8));
		double bySoreness = Math.min(0.85, 1.7 * sorenessShift);
		return 1 - (1 - byLoad) * (1 - bySoreness);
	}

	/**
	 * The chance that a stiffness by load or soreness is plain, two grades and not one.
	 */
	static double plainChance(double loadRatio, double sorenessShift) {
		double excess = Math.max(0, Math.log(Math.max(loadRatio, 1e-9))) + sorenessShift;
		return 1 / (1 + Math.exp(-(excess - 0.45) / 0.12));
	}

	/**
	 * What is told of a morning, or nothing.
	 * @param day the morning's day
	 * @param loadRatio yesterday's greatest load over the tolerance
	 * @param sorenessShift log of tolerance lost to irritation and flare
	 * @return the answer
	 */
	Optional<MorningSeen> tell(int day, double loadRatio, double sorenessShift) {
		Luck luck = this.home.luck().on(Topic.MORNING, day);
		Seeing seeing = this.home.owner().seeing();
		boolean stiff = luck.happens(stiffChance(loadRatio, sorenessShift));
		boolean plain = luck.happens(plainChance(loadRatio, sorenessShift));
		boolean usualStiffness = luck.happens(this.home.body().usualStiffness());
		boolean sees = luck.happens(seeing.mornings());
		boolean falseAlarm = luck.happens(seeing.falseAlarms());
		int grade = (sees && stiff) ? (plain ? 2 : 1) : 0;
		boolean missed = this.home.owner().silence().missed(luck, day, grade > 0);
		boolean late = luck.happens(this.home.owner().telling().late());
		if (missed) {
			return Optional.empty();
		}
		return Optional.of(answer(day, grade, sees && usualStiffness, falseAlarm, late, luck));
	}

	private MorningSeen answer(int day, int grade, boolean usualStiffness, boolean falseAlarm, boolean late,
			Luck luck) {
		if (grade == 2) {
			Sign second = Sign.seen(luck.happens(0.5) ? SignKind.DIFFICULTY_RISING : SignKind.LAMENESS);
			return seen(day, List.of(stiffness(Severity.MODERATE), second), luck.between(15, 40), Overall.WORSE, late);
		}
		if (grade == 1) {
			return seen(day, List.of(stiffness(Severity.MILD)), luck.between(5, 15),
					luck.happens(0.65) ? Overall.WORSE : null, late);
		}
		if (usualStiffness) {
			return seen(day, List.of(stiffness(Severity.MILD)), luck.between(3, 10),
					luck.happens(0.6) ? Overall.USUAL : luck.happens(0.5) ? Overall.WORSE : null, late);
		}
		if (falseAlarm) {
			return seen(day, List.of(stiffness(Severity.MILD)), null, Overall.WORSE, late);
		}
		return seen(day, List.of(), null, luck.happens(0.7) ? Overall.USUAL : luck.happens(0.3) ? Overall.BETTER : null,
				late);
	}

	private static MorningSeen seen(int day, List<Sign> signs, @Nullable Double stiffMinutes, @Nullable Overall overall,
			boolean late) {
		Double minutes = (stiffMinutes != null) ? (Double) Math.rint(stiffMinutes) : null;
		return new MorningSeen(Household.ENROLLED.plusDays(day), signs, minutes, overall, late);
	}

	private static Sign stiffness(Severity severity) {
		return new Sign(SignKind.STIFFNESS, true, severity, null, null, null, null);
	}

}
