package measuredwalk.pictures;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.IntStream;

import measuredwalk.pictures.PictureDay.Change;
import measuredwalk.pictures.PictureDay.ChangeKind;
import measuredwalk.pictures.PictureDay.Morning;
import measuredwalk.pictures.PictureDay.Suggested;
import measuredwalk.pictures.PictureDay.Walk;

/** Invented days of an invented dog. */
final class SampleDays {

	static final LocalDate FIRST = LocalDate.of(2026, 2, 1);

	private SampleDays() {
	}

	static List<PictureDay> of(int days) {
		return IntStream.range(0, days).mapToObj(SampleDays::day).toList();
	}

	private static PictureDay day(int index) {
		double suggested = 12 + index * 0.15;
		Suggested believed = new Suggested(2, suggested, 14 - 60.0 / (index + 10), 18 + index * 0.1,
				24 + 90.0 / (index + 5));
		List<Walk> walks = (index % 6 == 4) ? List.of()
				: List.of(new Walk(suggested + (index % 4) - 1.5, (index % 5 == 3) ? "slowing, mild" : ""),
						new Walk(suggested + (index % 3) - 1, ""));
		List<Change> changes = switch (index) {
			case 0 -> List.of(new Change(ChangeKind.PLAN, "plan 2 walks of 12 min"),
					new Change(ChangeKind.MEDICINE, "nsaid given already"));
			case 9 -> List.of(new Change(ChangeKind.PLAN, "plan 2 walks of 14 min"));
			default -> List.of();
		};
		return new PictureDay(FIRST.plusDays(index), believed, walks, morning(index), changes);
	}

	private static Morning morning(int index) {
		return switch (index % 7) {
			case 3 -> Morning.WORSE;
			case 4 -> Morning.SOME_SIGNS;
			case 5 -> Morning.NOT_TOLD;
			default -> Morning.CLEAR;
		};
	}

	static List<TrendDay> trend(int days) {
		return IntStream.range(0, days)
			.mapToObj((i) -> new TrendDay(FIRST.plusDays(i), i % 6 != 4,
					(i < days - 8) ? ((i % 5 == 0) ? 1 : 0) : 1 + i % 3, 24 + i % 4))
			.toList();
	}

}
