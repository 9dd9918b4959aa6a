package measuredwalk.tolerance;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

import measuredwalk.tolerance.ToleranceEvent.WalkTaken;

/** Counts the evidence of a number of days. */
final class EvidenceCount {

	/** Walks from this share of the median tolerance say something of it. */
	private static final double NEAR = 0.8;

	/** Bands meet at these shares of the suggestion. */
	private static final double[] BANDS = { 0, 0.8, 1.1, Double.POSITIVE_INFINITY };

	private EvidenceCount() {
	}

	static Evidence of(List<ToleranceEvent> history, Suggestion today, int days, PastDays past) {
		LocalDate from = today.date().minusDays(days);
		List<WalkTaken> walks = history.stream()
			.filter(WalkTaken.class::isInstance)
			.map(WalkTaken.class::cast)
			.filter((walk) -> walk.date().isAfter(from) && !walk.date().isAfter(today.date()))
			.toList();
		int near = (int) walks.stream().filter((walk) -> walk.minutes() >= NEAR * today.toleranceMedian()).count();
		return new Evidence(from.plusDays(1), today.date(), bands(walks, today.minutes()), mornings(past, days), near);
	}

	private static List<Evidence.WalksOfLength> bands(List<WalkTaken> walks, double minutes) {
		List<Evidence.WalksOfLength> bands = new ArrayList<>();
		for (int band = 1; band < BANDS.length; band++) {
			double over = Math.rint(BANDS[band - 1] * minutes);
			double most = Math.rint(BANDS[band] * minutes);
			List<WalkTaken> within = walks.stream()
				.filter((walk) -> walk.minutes() > over && walk.minutes() <= most)
				.toList();
			if (!within.isEmpty()) {
				bands.add(new Evidence.WalksOfLength(over, most, within.size(),
						(int) within.stream().filter(EvidenceCount::hasSigns).count()));
			}
		}
		return bands;
	}

	private static boolean hasSigns(WalkTaken walk) {
		return walk.signs().stream().anyMatch(SignMeaning::countsForTolerance);
	}

	private static Evidence.Mornings mornings(PastDays past, int days) {
		int told = 0;
		int worse = 0;
		int bad = 0;
		for (int ago = 1; ago <= days; ago++) {
			PastDay day = past.day(ago);
			if (day != null && day.morning() != null) {
				told++;
				worse += day.morning().isClear() ? 0 : 1;
				bad += day.morning().isBad() ? 1 : 0;
			}
		}
		return new Evidence.Mornings(told, worse, bad);
	}

}
