package measuredwalk.reading.observation;

import java.util.ArrayList;
import java.util.List;

import measuredwalk.reading.WalkTold;
import measuredwalk.reading.amount.Amounts;
import measuredwalk.reading.amount.Onset;
import measuredwalk.reading.context.Annotation;
import measuredwalk.signs.Moment;
import measuredwalk.signs.Sign;
import org.jspecify.annotations.Nullable;

/** Gives each onset to the sign that it is told of. */
public final class OnsetPlacer {

	/** Clauses between a sign and its minute: 'a hitch, back right, 20 min in'. */
	private static final int MOST_CLAUSES = 3;

	private OnsetPlacer() {
	}

	/**
	 * Places the onsets.
	 * @param observations the signs
	 * @param amounts the onsets, and the walk that some are counted back from
	 * @param annotation the message's phrases
	 * @return the signs with their onsets
	 */
	public static List<Observation> placed(List<Observation> observations, Amounts amounts, Annotation annotation) {
		List<Observation> placed = new ArrayList<>(observations);
		for (Onset onset : amounts.onsets()) {
			Double minute = minute(onset, amounts.walks());
			int best = nearest(placed, onset, annotation);
			if (minute != null && best >= 0) {
				Sign sign = placed.get(best).sign();
				Moment when = (onset.fromEnd() == null) ? sign.when() : Moment.END;
				placed.set(best, placed.get(best)
					.with(new Sign(sign.kind(), true, sign.severity(), sign.side(), sign.limb(), when, minute)));
			}
		}
		return placed.stream()
			.map((seen) -> atHalf(seen, amounts.walks()))
			.map((seen) -> atNight(seen, amounts.nightWords(), annotation))
			.toList();
	}

	/** Half way is half of the length, when that is known. */
	private static Observation atHalf(Observation seen, List<WalkTold> walks) {
		Sign sign = seen.sign();
		Double length = (walks.size() == 1) ? walks.get(0).minutes() : null;
		if (sign.when() != Moment.MIDDLE || sign.onsetMinute() != null || length == null) {
			return seen;
		}
		return seen.with(new Sign(sign.kind(), sign.present(), sign.severity(), sign.side(), sign.limb(), sign.when(),
				length / 2));
	}

	/** 'pacing at 3': an hour of the night in the same clause. */
	private static Observation atNight(Observation seen, List<Integer> nightWords, Annotation annotation) {
		Sign sign = seen.sign();
		boolean night = nightWords.stream()
			.anyMatch((word) -> annotation.clauses().of(word) == annotation.clauses().of(seen.mention().from()));
		if (!night || sign.when() != null || !sign.present()) {
			return seen;
		}
		return seen.with(new Sign(sign.kind(), true, sign.severity(), sign.side(), sign.limb(), Moment.NIGHT,
				sign.onsetMinute()));
	}

	private static @Nullable Double minute(Onset onset, List<WalkTold> walks) {
		if (onset.minute() != null || onset.fromEnd() == null) {
			return onset.minute();
		}
		Double length = walks.isEmpty() ? null : walks.get(0).minutes();
		return (length == null || length < onset.fromEnd()) ? null : length - onset.fromEnd();
	}

	private static int nearest(List<Observation> observations, Onset onset, Annotation annotation) {
		int best = -1;
		int nearest = Integer.MAX_VALUE;
		for (int index = 0; index < observations.size(); index++) {
			Observation seen = observations.get(index);
			if (seen.sign().present() && seen.sign().onsetMinute() == null) {
				int clauses = Math
					.abs(annotation.clauses().of(seen.mention().from()) - annotation.clauses().of(onset.word()));
				int distance = Math.abs(seen.mention().from() - onset.word()) + clauses * 10;
				if (distance < nearest && clauses <= MOST_CLAUSES) {
					best = index;
					nearest = distance;
				}
			}
		}
		return best;
	}

}
