package measuredwalk.pictures;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

/**
 * The small picture beside an alert: the worst sign of each day above, the minutes walked
 * below, and the day on which it was raised.
 */
public final class TrendPicture {

	private static final int WIDTH = 360;

	private static final int HEIGHT = 168;

	private static final double LEFT = 46;

	private static final int RECENT_DAYS = 7;

	private final List<TrendDay> days;

	private final LocalDate raisedOn;

	private final Chart grades;

	private final Chart minutes;

	private TrendPicture(List<TrendDay> days, LocalDate raisedOn) {
		this.days = days;
		this.raisedOn = raisedOn;
		double most = days.stream().mapToDouble(TrendDay::minutes).max().orElse(0);
		this.grades = new Chart(LEFT, WIDTH - 8, 26, 74, days.size(), 3);
		this.minutes = new Chart(LEFT, WIDTH - 8, 88, 134, days.size(), Math.max(10, most));
	}

	/**
	 * Draws the days before an alert.
	 * @param dog what the dog is called
	 * @param days the days in a row, the first day first, at least one
	 * @param raisedOn the day on which the alert was raised
	 * @return the picture, 360 pixels wide
	 * @throws IllegalArgumentException when there is no day
	 */
	public static Picture of(String dog, List<TrendDay> days, LocalDate raisedOn) {
		if (days.isEmpty()) {
			throw new IllegalArgumentException("a picture needs at least one day");
		}
		TrendPicture picture = new TrendPicture(List.copyOf(days), raisedOn);
		return new Picture(WIDTH, HEIGHT, summary(dog, days), days.stream().map(TrendPicture::line).toList(),
				picture::draw);
	}

	private void draw(Surface surface) {
		surface.words(new Spot(4, 14), PictureWords.of("trend.grade"), Style.WORDS, Anchor.START, Style.INK);
		List<String> names = List.of("trend.mild", "trend.clear", "trend.severe");
		for (int grade = 0; grade <= names.size(); grade++) {
			double y = this.grades.y(grade);
			surface.line(LEFT, y, WIDTH - 8, y, Look.lined(Style.GRID, 1));
			if (grade > 0) {
				surface.words(new Spot(LEFT - 5, y + 4), PictureWords.of(names.get(grade - 1)), Style.WORDS, Anchor.END,
						Style.FAINT);
			}
		}
		minuteScale(surface);
		IntStream.range(0, this.days.size())
			.forEach((i) -> surface.titled(line(this.days.get(i)), () -> day(surface, i)));
		this.grades.dates(surface, this.days.stream().map(TrendDay::date).toList(), HEIGHT - 18);
		surface.words(new Spot(4, HEIGHT - 4),
				PictureWords.of("trend.minutes") + ", - " + PictureWords.of("trend.none"), Style.WORDS, Anchor.START,
				Style.INK);
	}

	private void minuteScale(Surface surface) {
		double floor = this.minutes.floor();
		surface.line(LEFT, floor, WIDTH - 8, floor, Look.lined(Style.FAINT, 1));
		surface.words(new Spot(LEFT - 5, this.minutes.top() + 6),
				PictureWords.figure(this.minutes.highest()) + " " + PictureWords.of("minutes"), Style.WORDS, Anchor.END,
				Style.FAINT);
		surface.words(new Spot(LEFT - 5, floor + 3), "0", Style.WORDS, Anchor.END, Style.FAINT);
	}

	private void day(Surface surface, int index) {
		TrendDay day = this.days.get(index);
		double x = this.grades.x(index);
		double width = this.grades.slot() * 0.62;
		if (day.date().equals(this.raisedOn)) {
			surface.line(x, 18, x, this.minutes.floor(), Look.dashed(Style.INK, 1, 2, 2));
			boolean late = x > WIDTH - 60;
			surface.words(new Spot(late ? WIDTH - 8 : x, 14), PictureWords.of("trend.alert"), Style.WORDS,
					late ? Anchor.END : Anchor.MIDDLE, Style.INK);
		}
		if (!day.told()) {
			surface.line(x - 2, this.minutes.floor() - 4, x + 2, this.minutes.floor() - 4, Look.lined(Style.FAINT, 1));
			return;
		}
		if (day.grade() > 0) {
			double y = this.grades.y(day.grade());
			Marks.hatchedBox(surface, x - width / 2, y, width, this.grades.floor() - y, Style.SIGN);
		}
		double y = this.minutes.y(day.minutes());
		Marks.box(surface, x - width / 2, y, width, this.minutes.floor() - y, Look.filled(Style.WALKED));
	}

	private static String summary(String dog, List<TrendDay> days) {
		List<TrendDay> told = days.stream().filter(TrendDay::told).toList();
		int split = Math.max(0, told.size() - RECENT_DAYS);
		List<TrendDay> before = told.subList(0, split);
		List<TrendDay> recent = told.subList(split, told.size());
		return PictureWords.of("trend.summary", dog, PictureWords.day(days.get(0).date()),
				PictureWords.day(days.get(days.size() - 1).date()), meanGrade(recent), meanGrade(before),
				meanMinutes(recent), meanMinutes(before));
	}

	private static String meanGrade(List<TrendDay> days) {
		return days.isEmpty() ? "-"
				: String.format(Locale.ROOT, "%.1f", days.stream().mapToInt(TrendDay::grade).average().orElse(0));
	}

	private static String meanMinutes(List<TrendDay> days) {
		return days.isEmpty() ? "-"
				: PictureWords.figure(days.stream().mapToDouble(TrendDay::minutes).average().orElse(0));
	}

	private static String line(TrendDay day) {
		return day.told()
				? PictureWords.of("trend.line", PictureWords.day(day.date()), day.grade(),
						PictureWords.figure(day.minutes()))
				: PictureWords.of("trend.silent", PictureWords.day(day.date()));
	}

}
