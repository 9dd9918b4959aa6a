package measuredwalk.clinic.pages;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;

import measuredwalk.journal.WalkFacts;
import measuredwalk.tolerance.Suggestion;
import org.springframework.web.util.HtmlUtils;

/**
 * Draws a course as a picture in the page: days from left to right, minutes upwards. Each
 * kind of mark has a shape of its own, so that nothing hangs on colour.
 */
final class TimelineDrawing {

	private static final double WIDTH = 760;

	private static final double HEIGHT = 280;

	private static final double LEFT = 34;

	private static final double RIGHT = 12;

	private static final double TOP = 24;

	private static final double FLOOR = 222;

	private static final double MORNING_LINE = 240;

	private static final double DATE_LINE = 266;

	private static final int MOST_DATES = 8;

	private static final DateTimeFormatter DATE = DateTimeFormatter.ofPattern("d MMM", Locale.UK);

	private final List<CourseDay> days;

	private final double highest;

	private final StringBuilder svg = new StringBuilder();

	private TimelineDrawing(List<CourseDay> days) {
		this.days = days;
		this.highest = highest(days);
	}

	static String of(List<CourseDay> days, String title) {
		return new TimelineDrawing(days).draw(title);
	}

	/** Wide bands are cut off, so that they do not press all else to the floor. */
	private static double highest(List<CourseDay> days) {
		double walked = days.stream()
			.flatMap((day) -> day.walks().stream())
			.map(WalkFacts::minutes)
			.filter(Objects::nonNull)
			.mapToDouble(Double::doubleValue)
			.max()
			.orElse(0);
		double suggested = days.stream()
			.map(CourseDay::suggestion)
			.filter(Objects::nonNull)
			.mapToDouble((each) -> Math.max(1.3 * each.minutes(), 1.15 * each.toleranceMedian()))
			.max()
			.orElse(10);
		return Math.ceil(Math.max(1.1 * walked, suggested) / 10) * 10;
	}

	private String draw(String title) {
		add("<svg viewBox=\"0 0 %.0f %.0f\" role=\"img\" aria-label=\"%s\">", WIDTH, HEIGHT,
				HtmlUtils.htmlEscape(title));
		band();
		grid();
		line("middle", Suggestion::toleranceMedian);
		line("step", Suggestion::minutes);
		for (int i = 0; i < this.days.size(); i++) {
			day(i);
		}
		return this.svg.append("</svg>").toString();
	}

	private void grid() {
		double step = (this.highest > 60) ? 20 : 10;
		for (double minutes = 0; minutes <= this.highest; minutes += step) {
			add("<line class=\"grid\" x1=\"%.1f\" y1=\"%.1f\" x2=\"%.1f\" y2=\"%.1f\"/>", LEFT, y(minutes),
					WIDTH - RIGHT, y(minutes));
			add("<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"end\">%.0f</text>", LEFT - 6, y(minutes) + 4, minutes);
		}
		add("<text x=\"2\" y=\"12\">min</text>");
	}

	private void band() {
		List<Integer> known = known();
		if (known.size() < 2) {
			return;
		}
		String upper = known.stream()
			.map((i) -> point(i, suggestion(i).toleranceHigh()))
			.collect(Collectors.joining(" "));
		String lower = known.stream()
			.sorted((a, b) -> b - a)
			.map((i) -> point(i, suggestion(i).toleranceLow()))
			.collect(Collectors.joining(" "));
		add("<polygon class=\"band\" points=\"%s %s\"/>", upper, lower);
	}

	private void line(String kind, java.util.function.ToDoubleFunction<Suggestion> minutes) {
		String points = known().stream()
			.map((i) -> point(i, minutes.applyAsDouble(suggestion(i))))
			.collect(Collectors.joining(" "));
		add("<polyline class=\"%s\" points=\"%s\"/>", kind, points);
	}

	private List<Integer> known() {
		return java.util.stream.IntStream.range(0, this.days.size())
			.filter((i) -> this.days.get(i).suggestion() != null)
			.boxed()
			.toList();
	}

	private Suggestion suggestion(int index) {
		return Objects.requireNonNull(this.days.get(index).suggestion());
	}

	private void day(int index) {
		CourseDay day = this.days.get(index);
		double x = x(index);
		for (int i = 0; i < day.changes().size(); i++) {
			add("<line class=\"change\" x1=\"%1$.1f\" y1=\"%2$.1f\" x2=\"%1$.1f\" y2=\"%3$.1f\"/>", x, TOP, FLOOR);
			add("<text class=\"mark\" x=\"%.1f\" y=\"%.1f\" text-anchor=\"middle\"><title>%s</title>%s</text>",
					x + 12 * i, TOP - 6, HtmlUtils.htmlEscape(day.changes().get(i).words()),
					day.changes().get(i).letter());
		}
		day.walks().stream().filter((walk) -> walk.minutes() != null).forEach((walk) -> walk(x, walk));
		morning(x, day);
		date(index, day.date());
	}

	private void walk(double x, WalkFacts walk) {
		double y = y(Objects.requireNonNull(walk.minutes()));
		if (CourseDay.anySign(walk)) {
			add("<path class=\"signs\" d=\"M%.1f %.1f l5 -5.5 l5 5.5 l-5 5.5 z\"><title>%s</title></path>", x - 5, y,
					HtmlUtils.htmlEscape(Wording.walk(walk)));
		}
		else {
			add("<circle class=\"walk\" cx=\"%.1f\" cy=\"%.1f\" r=\"3.2\"><title>%s</title></circle>", x, y,
					HtmlUtils.htmlEscape(Wording.walk(walk)));
		}
	}

	private void morning(double x, CourseDay day) {
		if (day.morning() == null) {
			return;
		}
		switch (day.morning()) {
			case CLEAR -> add("<circle class=\"clear\" cx=\"%.1f\" cy=\"%.1f\" r=\"1.8\"/>", x, MORNING_LINE);
			case SOME_SIGNS -> triangle("signs", x);
			case WORSE -> triangle("worse", x);
		}
	}

	private void triangle(String kind, double x) {
		add("<path class=\"%s\" d=\"M%.1f %.1f l4.5 -8 l4.5 8 z\"/>", kind, x - 4.5, MORNING_LINE + 4);
	}

	private void date(int index, LocalDate date) {
		int every = Math.max(1, (int) Math.ceil(this.days.size() / (double) MOST_DATES));
		if (index % every == 0) {
			add("<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"middle\">%s</text>", x(index), DATE_LINE, DATE.format(date));
		}
	}

	private String point(int index, double minutes) {
		return String.format(Locale.ROOT, "%.1f,%.1f", x(index), y(minutes));
	}

	private double x(int index) {
		double inner = WIDTH - LEFT - RIGHT - 28;
		return LEFT + 14 + ((this.days.size() > 1) ? inner * index / (this.days.size() - 1) : inner / 2);
	}

	private double y(double minutes) {
		return FLOOR - (FLOOR - TOP) * Math.min(1, minutes / this.highest);
	}

	private void add(String text, Object... places) {
		this.svg.append(String.format(Locale.ROOT, text, places));
	}

}
