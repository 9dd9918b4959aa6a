package measuredwalk.escalation.course;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import measuredwalk.escalation.ReviewDesign;
import measuredwalk.surveillance.Cusum;
import measuredwalk.surveillance.RunLengths;
import measuredwalk.tolerance.simulation.SimulatedCourse;
import measuredwalk.tolerance.simulation.SimulatedCourse.Dosing;

/**
 * Prints how soon charts and plain rules notice a lasting loss, and how often they are
 * wrong, on simulated dogs: with the model dosing and at a fixed dose. The first argument
 * is the number of dogs of each kind, the second {@code tuning} or {@code judging}.
 */
final class PileUpFigures {

	private static final int DAYS = 190;

	/** No rule can speak before; these days are not counted. */
	private static final int FIRST_DAY = 28;

	private static final int SOON_DAYS = 30;

	/** A spell of alarms is over after so many days without one, as in the program. */
	private static final int OVER_AFTER_DAYS = 3;

	private final PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);

	private final Map<List<Object>, BurdenChart> designs = new HashMap<>();

	private final int dogs;

	private final boolean judging;

	private PileUpFigures(int dogs, boolean judging) {
		this.dogs = dogs;
		this.judging = judging;
	}

	public static void main(String[] arguments) {
		int dogs = (arguments.length > 0) ? Integer.parseInt(arguments[0]) : 100;
		new PileUpFigures(dogs, arguments.length < 2 || arguments[1].equals("judging")).print();
	}

	/** The days on which a rule fits, from 0. */
	private interface Rule extends Function<SimulatedCourse, List<Integer>> {

	}

	private Map<String, Rule> rules() {
		Map<String, Rule> rules = new LinkedHashMap<>();
		for (int grade = 1; grade <= 2; grade++) {
			for (int bad = 2; bad <= 5; bad++) {
				rules.put(bad + " days in 7 of grade " + grade + " or worse", badDays(bad, grade));
			}
		}
		for (double every : new double[] { 60, 180, 540, 1080, 2160 }) {
			rules.put("burden chart, false alarm every " + Math.round(every), burden(every));
		}
		for (double limit : new double[] { 0.5, 0.7, 1.0, 1.5, 2.0, 3.0 }) {
			rules.put("cut chart, limit " + limit, cut(limit));
		}
		for (ReviewDesign design : ReviewDesign.values()) {
			rules.put("either chart, " + design.code() + ": " + Math.round(design.burdenDays()) + " and "
					+ design.cutLimit(), either(burden(design.burdenDays()), cut(design.cutLimit())));
		}
		return rules;
	}

	private void print() {
		this.out.printf("%s seeds, %d dogs of each kind, %d days%n%n", this.judging ? "judging" : "tuning", this.dogs,
				DAYS);
		this.out
			.println("| rule | fixed dose: false a dog in 180 days | noticed in 30 days | median days | model doses:"
					+ " false a dog in 180 days | noticed in 30 days | median days |");
		this.out.println("| --- ".repeat(7) + "|");
		Map<Dosing, List<List<SimulatedCourse>>> courses = new LinkedHashMap<>();
		for (Dosing dosing : List.of(Dosing.FIXED, Dosing.MODEL)) {
			courses.put(dosing, List.of(SimulatedCourse.of(false, dosing, this.dogs, DAYS, this.judging),
					SimulatedCourse.of(true, dosing, this.dogs, DAYS, this.judging)));
		}
		rules().forEach((name,
				rule) -> this.out.println("| " + name + " | "
						+ courses.values()
							.stream()
							.map((arm) -> falseAlarms(rule, arm.get(0)) + " | " + noticed(rule, arm.get(1)))
							.collect(Collectors.joining(" | "))
						+ " |"));
		printExact(courses.get(Dosing.MODEL).get(0));
	}

	private static String falseAlarms(Rule rule, List<SimulatedCourse> steady) {
		long alarms = steady.stream().mapToLong((course) -> begins(rule.apply(course)).size()).sum();
		return String.format(Locale.ROOT, "%.2f", 180.0 * alarms / (steady.size() * (DAYS - FIRST_DAY)));
	}

	private static String noticed(Rule rule, List<SimulatedCourse> dropping) {
		List<Integer> after = new ArrayList<>();
		for (SimulatedCourse course : dropping) {
			int drop = course.dropDay().orElseThrow() - 1;
			begins(rule.apply(course)).stream()
				.filter((day) -> day >= drop && day <= drop + SOON_DAYS)
				.findFirst()
				.ifPresent((day) -> after.add(day - drop));
		}
		List<Integer> sorted = after.stream().sorted().toList();
		String median = sorted.isEmpty() ? "-" : String.valueOf(sorted.get((sorted.size() - 1) / 2));
		return String.format(Locale.ROOT, "%.0f %% | %s", 100.0 * after.size() / dropping.size(), median);
	}

	/** The first day of each spell. */
	private static List<Integer> begins(List<Integer> days) {
		List<Integer> begins = new ArrayList<>();
		int last = Integer.MIN_VALUE / 2;
		for (int day : days) {
			if (day - last > OVER_AFTER_DAYS && day >= FIRST_DAY) {
				begins.add(day);
			}
			last = day;
		}
		return begins;
	}

	private static Rule badDays(int least, int grade) {
		return (course) -> fitting((day) -> course.days()
			.subList(Math.max(0, day - 6), day + 1)
			.stream()
			.filter((each) -> grade(each) >= grade)
			.count() >= least);
	}

	private Rule burden(double every) {
		return (course) -> fitting((day) -> {
			List<Integer> grades = course.days()
				.subList(0, day + 1)
				.stream()
				.filter(SimulatedCourse.Day::told)
				.map(PileUpFigures::grade)
				.toList();
			return PilingUp.level(grades, (usual) -> this.designs.computeIfAbsent(List.of(usual, every),
					(key) -> BurdenChart.of(usual, every))) >= 1;
		});
	}

	private static Rule cut(double limit) {
		return (course) -> {
			List<Double> medians = course.days().stream().map(SimulatedCourse.Day::toleranceMedian).toList();
			return fitting((day) -> new CutChart(limit).level(medians.subList(0, day + 1)) >= 1);
		};
	}

	private static Rule either(Rule one, Rule other) {
		return (course) -> Stream.concat(one.apply(course).stream(), other.apply(course).stream())
			.distinct()
			.sorted()
			.toList();
	}

	private static List<Integer> fitting(java.util.function.IntPredicate fits) {
		return java.util.stream.IntStream.range(0, DAYS).filter(fits).boxed().toList();
	}

	private static int grade(SimulatedCourse.Day day) {
		int worst = day.signs()
			.stream()
			.filter((sign) -> sign.present() && SignGrade.ofMoving(sign))
			.mapToInt(SignGrade::of)
			.max()
			.orElse(0);
		return day.worse() ? Math.max(1, worst) : worst;
	}

	/** Exact run lengths of the designs for independent days, by what is usual. */
	private void printDesigns() {
		int[][] baselines = { { 28, 0, 0, 0 }, { 20, 6, 2, 0 }, { 14, 14, 0, 0 }, { 0, 28, 0, 0 }, { 7, 14, 6, 1 } };
		for (ReviewDesign design : ReviewDesign.values()) {
			for (int[] days : baselines) {
				UsualDays usual = BurdenChartTests.usual(days[0], days[1], days[2], days[3]);
				Cusum chart = BurdenChart.of(usual, design.burdenDays()).cusum();
				this.out.printf(Locale.ROOT, "| %s | %d, %d, %d, %d | %.3f | %.3f | %.0f | %.1f |%n", design.code(),
						days[0], days[1], days[2], days[3], chart.reference(), chart.limit(),
						BurdenChart.falseAlarmEvery(chart, usual), BurdenChartTests.daysToARise(usual, design));
			}
		}
	}

	/**
	 * Exact run lengths for independent days with the spread of these in-control days.
	 */
	private void printExact(List<SimulatedCourse> steady) {
		List<Double> scores = new ArrayList<>();
		for (SimulatedCourse course : steady) {
			List<Double> medians = course.days().stream().map(SimulatedCourse.Day::toleranceMedian).toList();
			for (int day = FIRST_DAY; day < DAYS; day++) {
				scores.add(Math.min(0.3, Math.log(CutChart.usual(medians, day) / medians.get(day))));
			}
		}
		double[] sorted = scores.stream().mapToDouble(Double::doubleValue).sorted().toArray();
		printDesigns();
		this.out.println();
		for (double limit : new double[] { 0.5, 0.7, 1.0, 1.5, 2.0 }) {
			RunLengths exact = RunLengths.continuous(new Cusum(CutChart.REFERENCE, limit),
					(value) -> share(sorted, value), 200);
			this.out.printf(Locale.ROOT, "limit %.1f: exact average run length for independent days %.0f%n", limit,
					exact.from(0));
		}
	}

	private static double share(double[] sorted, double value) {
		int low = 0;
		int high = sorted.length;
		while (low < high) {
			int middle = (low + high) >>> 1;
			if (sorted[middle] <= value) {
				low = middle + 1;
			}
			else {
				high = middle;
			}
		}
		return (double) low / sorted.length;
	}

}
