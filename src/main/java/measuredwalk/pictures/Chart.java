package measuredwalk.pictures;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;

/**
 * The field of a picture in which days run from left to right and a figure upwards.
 *
 * @param left left edge
 * @param right right edge
 * @param top where the highest figure stands
 * @param floor where 0 stands
 * @param days number of days
 * @param highest the highest figure
 */
record Chart(double left, double right, double top, double floor, int days, double highest) {

	private static final DateTimeFormatter DATE = DateTimeFormatter.ofPattern("d MMM", Locale.UK);

	private static final double ROOM_FOR_A_DATE = 46;

	private static final double[] STEPS = { 5, 10, 20, 30, 60, 120 };

	private static final int MOST_STEPS = 6;

	/** Room for a figure, rounded up to whole steps of the grid. */
	static double roundedUp(double figure) {
		double step = step(figure);
		return Math.max(step, Math.ceil(figure / step) * step);
	}

	private static double step(double highest) {
		for (double step : STEPS) {
			if (highest / step <= MOST_STEPS) {
				return step;
			}
		}
		return STEPS[STEPS.length - 1];
	}

	double slot() {
		return (this.right - this.left) / Math.max(1, this.days);
	}

	double x(int day) {
		return this.left + slot() * (day + 0.5);
	}

	double y(double figure) {
		return this.floor - (this.floor - this.top) * Math.min(1, figure / this.highest);
	}

	/** Half the height of a mark, so that many days still have marks of their own. */
	double markSize() {
		return Math.min(4.5, Math.max(1.8, slot() * 0.6));
	}

	/** Lines and figures of the scale, with the unit above. */
	void grid(Surface surface, String unit) {
		scale(surface, Style.WORDS);
		surface.words(new Spot(2, this.top - 9), unit, Style.WORDS, Anchor.START, Style.FAINT);
	}

	/** Lines and figures of the scale, in letters of a size. */
	void scale(Surface surface, double size) {
		double step = step(this.highest);
		for (double figure = 0; figure <= this.highest + 0.01; figure += step) {
			surface.line(this.left, y(figure), this.right, y(figure), Look.lined(Style.GRID, 1));
			surface.words(new Spot(this.left - 5, y(figure) + size * 0.36), String.valueOf(Math.round(figure)), size,
					Anchor.END, Style.FAINT);
		}
	}

	/** As many dates as there is room for; the last day always has its own. */
	void dates(Surface surface, List<LocalDate> dates, double line) {
		int every = Math.max(1, (int) Math.ceil(ROOM_FOR_A_DATE / slot()));
		for (int day = dates.size() - 1; day >= 0; day -= every) {
			double x = Math.min(x(day), this.right - 14);
			surface.words(new Spot(x, line), DATE.format(dates.get(day)), Style.WORDS, Anchor.MIDDLE, Style.FAINT);
		}
	}

}
