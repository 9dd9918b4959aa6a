package measuredwalk.pictures;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

import measuredwalk.speech.Speaking;
import measuredwalk.speech.Speech;

/**
 * An owner's picture of a fortnight: the minutes of each day's walks as a bar, what was
 * suggested as a line over it, hatched where signs were seen, and the mornings below.
 */
public final class FortnightPicture {

	private static final int WIDTH = 390;

	private static final int FULL = 14;

	private static final double WIDEST_BAR = 36;

	private static final double LEFT = 36;

	private static final double TOP = 66;

	private static final double FLOOR = 248;

	/** How far below the floor the marks, the weekdays and the dates stand. */
	private static final double MARKS_BELOW = 16;

	private static final double WEEKDAYS_BELOW = 42;

	private static final double DATES_BELOW = 60;

	private static final double LEGEND_BELOW = 70;

	private static final double MARK = 6;

	private final List<PictureDay> days;

	private final Chart chart;

	private FortnightPicture(List<PictureDay> days) {
		this.days = days;
		double most = days.stream()
			.mapToDouble((day) -> Math.max(day.walkedMinutes(), day.suggestedMinutes()))
			.max()
			.orElse(0);
		this.chart = new Chart(LEFT, WIDTH - 8, TOP, FLOOR, days.size(), Chart.roundedUp(Math.max(10, most)));
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
		Speech speech = Speaking.now();
		return new Picture(WIDTH, (int) (FLOOR + LEGEND_BELOW + legend.height()), summary(dog, days),
				days.stream().map(FortnightPicture::line).toList(), (surface) -> Speaking.as(speech, () -> {
					picture.draw(surface, dog);
					legend.draw(surface, FLOOR + LEGEND_BELOW);
				}));
	}

	private static Legend legend() {
		return Legend.inTwoColumns(WIDTH, Style.OWNER_WORDS)
			.with((surface, x, y) -> Marks.box(surface, x - 7, y - 7, 14, 14, Look.filled(Style.WALKED)),
					FortnightWords.of("walked"))
			.with((surface, x, y) -> Marks.morning(surface, PictureDay.Morning.WORSE, x, y, MARK),
					FortnightWords.of("stiff"))
			.with((surface, x, y) -> Marks.hatchedBox(surface, x - 7, y - 7, 14, 14, Style.SIGN),
					FortnightWords.of("signs"))
			.with((surface, x, y) -> Marks.morning(surface, PictureDay.Morning.SOME_SIGNS, x, y, MARK),
					FortnightWords.of("some"))
			.with((surface, x, y) -> surface.line(x - 9, y, x + 9, y, Look.lined(Style.INK, 3)),
					FortnightWords.of("suggested"))
			.with((surface, x, y) -> Marks.morning(surface, PictureDay.Morning.CLEAR, x, y, MARK),
					FortnightWords.of("clear"));
	}

	private void draw(Surface surface, String dog) {
		title(surface, FortnightWords.of((this.days.size() < FULL) ? "title.begun" : "title", dog));
		surface.words(new Spot(6, TOP - 16), FortnightWords.of("unit"), Style.OWNER_WORDS, Anchor.START, Style.FAINT);
		this.chart.scale(surface, Style.OWNER_WORDS);
		IntStream.range(0, this.days.size())
			.forEach((i) -> surface.titled(line(this.days.get(i)), () -> day(surface, i)));
		IntStream.range(0, this.days.size()).forEach((i) -> date(surface, i));
	}

	/** A long name makes the letters smaller. */
	private static void title(Surface surface, String title) {
		double size = Math.min(Style.OWNER_TITLE, (WIDTH - 12) / (title.length() * Legend.LETTER));
		surface.words(new Spot(6, 24), title, size, Anchor.START, Style.INK);
	}

	/** Each day has its weekday; Mondays and the last day have their date as well. */
	private void date(Surface surface, int index) {
		LocalDate date = this.days.get(index).date();
		double x = this.chart.x(index);
		surface.words(new Spot(x, FLOOR + WEEKDAYS_BELOW), FortnightWords.weekday(date), Style.OWNER_WORDS,
				Anchor.MIDDLE, Style.INK);
		int last = this.days.size() - 1;
		if (index == last) {
			surface.words(new Spot(this.chart.right(), FLOOR + DATES_BELOW), FortnightWords.dayAndMonth(date),
					Style.OWNER_WORDS, Anchor.END, Style.FAINT);
		}
		else if (date.getDayOfWeek() == DayOfWeek.MONDAY && last - index > 2) {
			surface.words(new Spot(x - 4, FLOOR + DATES_BELOW), FortnightWords.dayAndMonth(date), Style.OWNER_WORDS,
					Anchor.START, Style.FAINT);
		}
	}

	private void day(Surface surface, int index) {
		PictureDay day = this.days.get(index);
		double width = Math.min(WIDEST_BAR, this.chart.slot() * 0.66);
		double left = this.chart.x(index) - width / 2;
		double sum = 0;
		for (PictureDay.Walk walk : day.walks()) {
			double foot = this.chart.y(sum) - ((sum > 0) ? 2 : 0);
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
			surface.line(left - 3, y, left + width + 3, y, Look.lined(Style.INK, 3));
		}
		Marks.morning(surface, day.morning(), this.chart.x(index), FLOOR + MARKS_BELOW, MARK);
	}

	private static String summary(String dog, List<PictureDay> days) {
		List<PictureDay> walked = days.stream().filter((day) -> !day.walks().isEmpty()).toList();
		return FortnightWords.of("summary", dog, FortnightWords.day(days.get(0).date()),
				FortnightWords.day(days.get(days.size() - 1).date()), walked.size(), days.size(),
				PictureWords.figure(walked.stream().mapToDouble(PictureDay::walkedMinutes).sum()),
				PictureWords.figure(walked.stream().mapToDouble(PictureDay::suggestedMinutes).sum()),
				walked.stream().filter(PictureDay::withSigns).count(),
				days.stream().filter((day) -> day.morning() == PictureDay.Morning.WORSE).count());
	}

	private static String line(PictureDay day) {
		String date = FortnightWords.day(day.date());
		String suggested = PictureWords.figure(day.suggestedMinutes());
		if (!day.told()) {
			return FortnightWords.of("silent", date, suggested);
		}
		List<String> parts = new ArrayList<>();
		parts.add(day.walks().isEmpty() ? FortnightWords.of("line.no-walk", date, suggested)
				: FortnightWords.of("line", date, PictureWords.figure(day.walkedMinutes()), suggested));
		day.walks().stream().map(PictureDay.Walk::signs).filter((signs) -> !signs.isEmpty()).forEach(parts::add);
		parts.add(FortnightWords.morning(day.morning()));
		return parts.stream().collect(Collectors.joining("; "));
	}

}
