package measuredwalk.reading.observation;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;

import measuredwalk.reading.context.Annotation;
import measuredwalk.reading.lexicon.Mention;
import measuredwalk.reading.lexicon.WordClass;
import measuredwalk.reading.words.Words;
import measuredwalk.signs.Coded;
import measuredwalk.signs.Severity;
import measuredwalk.signs.Sign;
import measuredwalk.signs.SignKind;

/** Gives signs how bad they were. */
final class Grades {

	/** There or not there; how much is not told by 'a bit' or 'so'. */
	private static final Set<SignKind> UNGRADED = EnumSet.of(SignKind.COLLAPSE, SignKind.SEIZURE, SignKind.RECUMBENCY,
			SignKind.NON_WEIGHT_BEARING, SignKind.PARESIS, SignKind.TOXIN_INGESTION, SignKind.INCONTINENCE,
			SignKind.MELAENA, SignKind.UNABLE_TO_URINATE, SignKind.BUNNY_HOPPING);

	/** The largest distance at which a grade is a sign's, in words. */
	private static final double REACH = 3.9;

	private static final double TOO_FAR = 9;

	/** The longest sentence that is nothing but a grade, in words. */
	private static final int MOST_AFTERTHOUGHT = 2;

	private final Annotation annotation;

	private final Words words;

	private final Nearness nearness;

	Grades(Annotation annotation, Nearness nearness) {
		this.annotation = annotation;
		this.nearness = nearness;
		this.words = annotation.words();
	}

	void give(List<Observation> observations, Mention mention) {
		int best = nearest(observations, mention);
		if (best < 0) {
			return;
		}
		Sign sign = observations.get(best).sign();
		Severity told = Coded.of(Severity.class, mention.value());
		boolean doubted = sign.severity() == Severity.MILD && observations.get(best).context().uncertain();
		if (sign.severity() == null || doubted || isStronger(told, sign.severity())) {
			observations.set(best, observations.get(best)
				.with(new Sign(sign.kind(), true, told, sign.side(), sign.limb(), sign.when(), sign.onsetMinute())));
		}
	}

	private int nearest(List<Observation> observations, Mention mention) {
		int best = -1;
		double nearest = REACH;
		for (int index = 0; index < observations.size(); index++) {
			Observation observation = observations.get(index);
			double distance = distance(observation.mention(), mention);
			if (distance < nearest && observation.sign().present() && !UNGRADED.contains(observation.sign().kind())) {
				best = index;
				nearest = distance;
			}
		}
		return best;
	}

	private static boolean isStronger(Severity told, Severity before) {
		return told == Severity.SEVERE && before == Severity.MODERATE;
	}

	private double distance(Mention sign, Mention grade) {
		if (this.annotation.clauses().of(sign.from()) != this.annotation.clauses().of(grade.from())) {
			return isTrailing(sign, grade) ? 1 + Math.min(2.5, (grade.from() - sign.to()) / 20.0) : TOO_FAR;
		}
		if (grade.overlaps(sign)) {
			return 0;
		}
		if (this.words.is(grade.from(), "so") && grade.length() == 1 && sign.from() != grade.to()) {
			return TOO_FAR;
		}
		if (grade.to() <= sign.from()) {
			return sign.from() - grade.to();
		}
		boolean onlyNext = this.annotation.is(grade.from(), WordClass.GRADES_NEXT) && grade.length() == 1;
		return onlyNext ? TOO_FAR : grade.from() - sign.to() + 0.5;
	}

	/** 'limping today, off hind, badly': a clause that is nothing but the grade. */
	private boolean isTrailing(Mention sign, Mention grade) {
		boolean alone = this.words.isBreakBefore(grade.from())
				&& (this.words.isBreakBefore(grade.to()) || (this.annotation.is(grade.to(), WordClass.AFTERTHOUGHT)
						&& this.words.isBreakBefore(grade.to() + 1)));
		return grade.from() >= sign.to() && ((alone && this.annotation.clauses()
			.sentenceOf(sign.from()) == this.annotation.clauses().sentenceOf(grade.from())) || isSentence(grade));
	}

	/** 'Stiff this morning. Only slightly.' */
	private boolean isSentence(Mention grade) {
		int from = this.annotation.clauses().sentenceStart(grade.from());
		int to = this.annotation.clauses().sentenceEnd(grade.from());
		return to - from <= MOST_AFTERTHOUGHT && this.nearness.isAlone(from, to);
	}

}
