package measuredwalk.tolerance.simulation;

import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * A picture of one trial: what the dog tolerated, what was believed, what was suggested.
 * The colours are Okabe and Ito's, which people with any colour vision tell apart; shape
 * and width differ too, so that a print in grey can be read.
 */
final class TrajectoryPicture {

	private static final int WIDTH = 360;

	private static final int HEIGHT = 280;

	private static final double LEFT = 34;

	private static final double RIGHT = 350;

	private static final double TOP = 62;

	private static final double BOTTOM = 248;

	private static final String BAND = "fill=\"#56B4E9\" fill-opacity=\".3\"";

	private static final String BELIEF = "fill=\"none\" stroke=\"#0072B2\" stroke-width=\"1.2\"";

	private static final String SUGGESTION = "fill=\"none\" stroke=\"#D55E00\" stroke-width=\"2.2\"";

	private static final String TRUTH = "fill=\"none\" stroke=\"#000\" stroke-opacity=\".45\" stroke-width=\".8\"";

	private static final String ABOVE = "stroke=\"#000\" stroke-width=\"1.4\"";

	private final String name;

	private final List<TrialDay> trial;

	private final double most;

	private final double step;

	TrajectoryPicture(String name, List<TrialDay> trial) {
		this.name = name;
		this.trial = List.copyOf(trial);
		double[] tops = trial.stream().mapToDouble((day) -> Math.max(day.tolerance(), day.dose().minutes())).toArray();
		double high = 1.15 * Quantiles.of(tops, 0.97);
		this.step = (high > 100) ? 20 : (high > 40) ? 10 : 5;
		this.most = this.step * Math.ceil(high / this.step);
	}

	String svg() {
		Svg svg = new Svg(WIDTH, HEIGHT, this.name, description());
		axes(svg);
		if (this.trial.stream().noneMatch((day) -> Double.isNaN(day.dose().low()))) {
			svg.path(band(), BAND);
			svg.path(line((day) -> day.dose().middle()), BELIEF);
		}
		svg.path(line(TrialDay::tolerance), TRUTH);
		svg.path(steps(), SUGGESTION);
		this.trial.stream()
			.filter((day) -> day.dose().minutes() > day.limit())
			.forEach((day) -> svg.line(x(day), BOTTOM - 5, x(day), BOTTOM, ABOVE));
		legend(svg);
		return svg.toString();
	}

	private String description() {
		long above = this.trial.stream().filter((day) -> day.dose().minutes() > day.limit()).count();
		return "Minutes of each walk over " + this.trial.size() + " days. The suggestion goes from "
				+ Math.round(this.trial.get(0).dose().minutes()) + " to "
				+ Math.round(this.trial.get(this.trial.size() - 1).dose().minutes())
				+ " minutes and is above what the dog tolerated that day on " + above
				+ " days. Behind it the dog's true tolerance of each day and what was believed of it, with 80 percent of the belief shaded.";
	}

	private void axes(Svg svg) {
		for (double minutes = 0; minutes <= this.most; minutes += this.step) {
			svg.line(LEFT, y(minutes), RIGHT, y(minutes), "stroke=\"#ddd\"");
			svg.text(LEFT - 4, y(minutes) + 4, Svg.number(minutes), "text-anchor=\"end\" fill=\"#444\"");
		}
		for (int day = 0; day <= this.trial.size(); day += 30) {
			svg.text(x(day), BOTTOM + 15, Svg.number(day), "text-anchor=\"middle\" fill=\"#444\"");
		}
		svg.text((LEFT + RIGHT) / 2, BOTTOM + 29, "day", "text-anchor=\"middle\" fill=\"#444\"");
	}

	private void legend(Svg svg) {
		svg.text(8, 16, this.name, "font-size=\"14\" font-weight=\"bold\"");
		key(svg, 8, 30, "suggested minutes", SUGGESTION);
		key(svg, 176, 30, "true tolerance that day", TRUTH);
		svg.path("M8 40h18v10h-18z", BAND);
		key(svg, 8, 45, "believed, 80 % shaded", BELIEF);
		svg.line(185, 40, 185, 50, ABOVE);
		svg.text(198, 49, "day above tolerance", "fill=\"#222\"");
	}

	private static void key(Svg svg, double x, double y, String words, String attributes) {
		svg.line(x, y, x + 18, y, attributes);
		svg.text(x + 22, y + 4, words, "fill=\"#222\"");
	}

	private String line(ToDoubleFunction<TrialDay> minutes) {
		StringBuilder data = new StringBuilder();
		for (TrialDay day : this.trial) {
			data.append(data.isEmpty() ? 'M' : 'L').append(point(day, minutes.applyAsDouble(day)));
		}
		return data.toString();
	}

	/** A suggestion holds for its whole day. */
	private String steps() {
		StringBuilder data = new StringBuilder();
		for (TrialDay day : this.trial) {
			data.append(data.isEmpty() ? 'M' : 'L').append(point(day, day.dose().minutes()));
			data.append('H').append(Svg.number(x(day.day() + 1)));
		}
		return data.toString();
	}

	private String band() {
		StringBuilder back = new StringBuilder();
		for (int index = this.trial.size() - 1; index >= 0; index--) {
			TrialDay day = this.trial.get(index);
			back.append('L').append(point(day, day.dose().low()));
		}
		return line((day) -> day.dose().high()) + back + "Z";
	}

	private String point(TrialDay day, double minutes) {
		return Svg.number(x(day)) + " " + Svg.number(y(minutes));
	}

	private double x(TrialDay day) {
		return x(day.day());
	}

	private double x(double day) {
		return LEFT + (RIGHT - LEFT) * day / (this.trial.size() + 1);
	}

	/** Minutes off the picture are drawn at its edge. */
	private double y(double minutes) {
		return BOTTOM - (BOTTOM - TOP) * Math.max(0, Math.min(this.most, minutes)) / this.most;
	}

}
