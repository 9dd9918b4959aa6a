package measuredwalk.pictures;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * An owner's picture of a fortnight: the minutes of each day's walks as a bar, what was
 * suggested as a line over it, hatched where signs were seen, and the mornings below.
 */
public final class FortnightPicture {

	private static final int WIDTH = 390;

	private static final double FLOOR = 208;

	private final List<PictureDay> days;

	private final Chart chart;

	private FortnightPicture(List<PictureDay> days) {
		this.days = days;
		double most = days.stream()
			.mapToDouble((day) -> Math.max(day.walkedMinutes(), day.suggestedMinutes()))
			.max()
			.orElse(0);
		this.chart = new Chart(30, WIDTH - 8, 42, FLOOR, days.size(), Chart.roundedUp(Math.max(10, most)));
	}

	/**
	 * Draws the days, as a rule fourteen.
	 * @param dog what the dog is called
	 * @param days the days in a row, the first day first, at least one
	 * @return the picture, 390 pixels wide
	 * @throws IllegalArgumentException when there is no day
	 */
	public static Picture of(String dog, List<PictureDay> days) {
		if (days.isEmpty()) {
			throw new IllegalArgumentException("a picture needs at least one day");
		}
		FortnightPicture picture = new FortnightPicture(List.copyOf(days));
		Legend legend = legend();
		return new Picture(WIDTH, (int) (FLOOR + 44 + legend.height()), summary(dog, days),
				days.stream().map(FortnightPicture::line).toList(), (surface) -> {
					picture.draw(surface, dog);
					legend.draw(surface, FLOOR + 42);
				});
	}

	private static Legend legend() {
		return new Legend(WIDTH)
			.with((surface, x, y) -> Marks.box(surface, x - 5, y - 5, 10, 10, Look.filled(Style.WALKED)),
					PictureWords.of("fortnight.walked"))
			.with((surface, x, y) -> Marks.hatchedBox(surface, x - 5, y - 5, 10, 10, Style.SIGN),
					PictureWords.of("fortnight.signs"))
			.with((surface, x, y) -> surface.line(x - 7, y, x + 7, y, Look.lined(Style.INK, 2.4)),
					PictureWords.of("fortnight.suggested"))
			.with((surface, x, y) -> Marks.morning(surface, PictureDay.Morning.WORSE, x, y, 4.5),
					PictureWords.of("fortnight.stiff"))
			.with((surface, x, y) -> Marks.morning(surface, PictureDay.Morning.SOME_SIGNS, x, y, 4.5),
					PictureWords.of("fortnight.some"));
	}

	private void draw(Surface surface, String dog) {
		surface.words(new Spot(4, 16), PictureWords.of("fortnight.title", dog), Style.TITLE, Anchor.START, Style.INK);
		this.chart.grid(surface, PictureWords.of("minutes"));
		IntStream.range(0, this.days.size())
			.forEach((i) -> surface.titled(line(this.days.get(i)), () -> day(surface, i)));
		this.chart.dates(surface, this.days.stream().map(PictureDay::date).toList(), FLOOR + 34);
	}

	private void day(Surface surface, int index) {
		PictureDay day = this.days.get(index);
		double width = this.chart.slot() * 0.62;
		double left = this.chart.x(index) - width / 2;
		double sum = 0;
		for (PictureDay.Walk walk : day.walks()) {
			double foot = this.chart.y(sum) - ((sum > 0) ? 1.5 : 0);
			sum += walk.minutes();
			double head = Math.min(foot - 0.5, this.chart.y(sum));
			if (walk.withSigns()) {
				Marks.hatchedBox(surface, left, head, width, foot - head, Style.SIGN);
			}
			else {
				Marks.box(surface, left, head, width, foot - head, Look.filled(Style.WALKED));
			}
		}
		if (day.suggested() != null) {
			double y = this.chart.y(day.suggestedMinutes());
			surface.line(left - 3, y, left + width + 3, y, Look.lined(Style.INK, 2.4));
		}
		Marks.morning(surface, day.morning(), this.chart.x(index), FLOOR + 12, 4.5);
	}

	private static String summary(String dog, List<PictureDay> days) {
		List<PictureDay> walked = days.stream().filter((day) -> !day.walks().isEmpty()).toList();
		return PictureWords.of("fortnight.summary", dog, PictureWords.day(days.get(0).date()),
				PictureWords.day(days.get(days.size() - 1).date()), walked.size(), days.size(),
				PictureWords.figure(walked.stream().mapToDouble(PictureDay::walkedMinutes).sum()),
				PictureWords.figure(walked.stream().mapToDouble(PictureDay::suggestedMinutes).sum()),
				walked.stream().filter(PictureDay::withSigns).count(),
				days.stream().filter((day) -> day.morning() == PictureDay.Morning.WORSE).count());
	}

	private static String line(PictureDay day) {
		List<String> parts = new ArrayList<>();
		parts.add(PictureWords.of("fortnight.line", PictureWords.day(day.date()),
				PictureWords.figure(day.walkedMinutes()), PictureWords.figure(day.suggestedMinutes())));
		day.walks().stream().map(PictureDay.Walk::signs).filter((signs) -> !signs.isEmpty()).forEach(parts::add);
		parts.add(PictureWords.morning(day.morning()));
		return parts.stream().collect(Collectors.joining("; "));
	}

}
