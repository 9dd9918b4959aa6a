package measuredwalk.pictures;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The clinic's picture of a course: walks in minutes, the tolerance with its 80 percent
 * interval, the suggested walk, mornings, and changes of plan and medicine.
 */
public final class TimelinePicture {

	private static final double TOP = 40;

	private static final double FLOOR = 222;

	private static final double MORNINGS = FLOOR + 15;

	private final List<PictureDay> days;

	private final Chart chart;

	private TimelinePicture(List<PictureDay> days, int width) {
		this.days = days;
		this.chart = new Chart(30, width - 8, TOP, FLOOR, days.size(), Chart.roundedUp(highest(days)));
	}

	/**
	 * Draws a course.
	 * @param dog what the dog is called
	 * @param days the days in a row, the first day first; may be empty
	 * @param width how wide, in pixels, at least 300
	 * @return the picture
	 */
	public static Picture of(String dog, List<PictureDay> days, int width) {
		TimelinePicture picture = new TimelinePicture(List.copyOf(days), width);
		Legend legend = legend(width);
		return new Picture(width, (int) (FLOOR + 46 + legend.height()), TimelineWords.summary(dog, days),
				days.stream().filter(TimelinePicture::worthALine).map(TimelineWords::line).toList(), (surface) -> {
					picture.draw(surface);
					legend.draw(surface, FLOOR + 44);
				});
	}

	private static boolean worthALine(PictureDay day) {
		return day.told() || day.suggested() != null || !day.changes().isEmpty();
	}

	/** Wide bands are cut off, so that they do not press all else to the floor. */
	private static double highest(List<PictureDay> days) {
		double walked = days.stream().mapToDouble(PictureDay::longestWalk).max().orElse(0);
		double suggested = days.stream()
			.map(PictureDay::suggested)
			.filter(Objects::nonNull)
			.mapToDouble((each) -> Math.max(1.3 * each.minutes(), 1.15 * each.toleranceMedian()))
			.max()
			.orElse(10);
		return Math.max(1.05 * walked, suggested);
	}

	private static Legend legend(int width) {
		return new Legend(width)
			.with((surface, x, y) -> Marks.box(surface, x - 8, y - 5, 16, 10, Look.filled(Style.BAND)),
					PictureWords.of("timeline.band"))
			.with((surface, x, y) -> surface.line(x - 8, y, x + 8, y, Look.dashed(Style.MEDIAN, 1.4, 4, 3)),
					PictureWords.of("timeline.median"))
			.with((surface, x, y) -> surface.line(x - 8, y, x + 8, y, Look.lined(Style.SUGGESTED, 2.2)),
					PictureWords.of("timeline.suggested"))
			.with((surface, x, y) -> Marks.dot(surface, x, y, 4.5), PictureWords.of("timeline.clean"))
			.with((surface, x, y) -> Marks.diamond(surface, x, y, 4.5), PictureWords.of("timeline.signs"))
			.with((surface, x, y) -> Marks.morning(surface, PictureDay.Morning.WORSE, x, y, 4.5),
					PictureWords.of("timeline.worse"))
			.with((surface, x, y) -> Marks.morning(surface, PictureDay.Morning.SOME_SIGNS, x, y, 4.5),
					PictureWords.of("timeline.some"))
			.with((surface, x, y) -> Marks.morning(surface, PictureDay.Morning.CLEAR, x, y, 4.5),
					PictureWords.of("timeline.clear"))
			.with((surface, x, y) -> surface.line(x, y - 6, x, y + 6, Look.dashed(Style.FAINT, 1, 2, 2)),
					PictureWords.of("timeline.changes"));
	}

	private void draw(Surface surface) {
		band(surface);
		this.chart.grid(surface, PictureWords.of("minutes"));
		surface.polyline(line(PictureDay.Suggested::toleranceMedian), Look.dashed(Style.MEDIAN, 1.4, 4, 3));
		surface.polyline(line(PictureDay.Suggested::minutes), Look.lined(Style.SUGGESTED, 2.2));
		IntStream.range(0, this.days.size()).forEach((i) -> changes(surface, i));
		IntStream.range(0, this.days.size())
			.filter((i) -> this.days.get(i).told())
			.forEach((i) -> surface.titled(TimelineWords.line(this.days.get(i)), () -> told(surface, i)));
		this.chart.dates(surface, this.days.stream().map(PictureDay::date).toList(), FLOOR + 36);
	}

	private void band(Surface surface) {
		List<Spot> upper = line(PictureDay.Suggested::toleranceHigh);
		List<Spot> lower = new ArrayList<>(line(PictureDay.Suggested::toleranceLow));
		java.util.Collections.reverse(lower);
		if (upper.size() > 1) {
			surface.polygon(Stream.concat(upper.stream(), lower.stream()).toList(), Look.filled(Style.BAND));
		}
	}

	private List<Spot> line(ToDoubleFunction<PictureDay.Suggested> figure) {
		List<Spot> spots = new ArrayList<>();
		for (int i = 0; i < this.days.size(); i++) {
			PictureDay.Suggested suggested = this.days.get(i).suggested();
			if (suggested != null) {
				spots.add(new Spot(this.chart.x(i), this.chart.y(figure.applyAsDouble(suggested))));
			}
		}
		return spots;
	}

	private void changes(Surface surface, int index) {
		List<PictureDay.Change> changes = this.days.get(index).changes();
		double x = this.chart.x(index);
		if (!changes.isEmpty()) {
			surface.line(x, TOP - 4, x, FLOOR, Look.dashed(Style.FAINT, 1, 2, 3));
		}
		List<PictureDay.ChangeKind> kinds = changes.stream().map(PictureDay.Change::kind).distinct().toList();
		for (int i = 0; i < kinds.size(); i++) {
			PictureDay.ChangeKind kind = kinds.get(i);
			double line = TOP - 8 - 12 * i;
			String title = changes.stream()
				.filter((change) -> change.kind() == kind)
				.map(PictureDay.Change::words)
				.collect(Collectors.joining("; "));
			surface.titled(title, () -> surface.words(new Spot(x, line), kind.name().substring(0, 1), Style.WORDS,
					Anchor.MIDDLE, Style.INK));
		}
	}

	private void told(Surface surface, int index) {
		PictureDay day = this.days.get(index);
		double x = this.chart.x(index);
		day.walks()
			.stream()
			.filter((walk) -> !walk.withSigns())
			.forEach((walk) -> Marks.dot(surface, x, this.chart.y(walk.minutes()), this.chart.markSize()));
		day.walks()
			.stream()
			.filter(PictureDay.Walk::withSigns)
			.forEach((walk) -> Marks.diamond(surface, x, this.chart.y(walk.minutes()), this.chart.markSize()));
		Marks.morning(surface, day.morning(), x, MORNINGS, this.chart.markSize());
	}

}
