package measuredwalk.tolerance.simulation;

import java.util.ArrayList;
import java.util.List;

/** Takes the dog out as its owner keeps to a suggestion. */
final class Outing {

	/**
	 * Rain, a telephone call: 4 % of walks end early for no reason of the dog's (a
	 * guess).
	 */
	private static final double CUT_SHORT = 0.04;

	/** Walks a day at most, to give each its own luck. */
	private static final int MOST_WALKS = 8;

	private final Household home;

	Outing(Household home) {
		this.home = home;
	}

	/**
	 * The walks of a day.
	 * @param morning what the dog woke up with
	 * @param tolerance its tolerance today, rested, in minutes
	 * @param dose what was suggested
	 * @param day the day
	 * @return what was walked, in order
	 */
	List<Walked> walk(Morning morning, double tolerance, Dose dose, int day) {
		double[] hours = WalkHours.of(dose.walks());
		List<Walked> walks = new ArrayList<>();
		for (int number = 0; number < hours.length; number++) {
			Luck luck = this.home.luck().on(Topic.OUTING, (long) day * MOST_WALKS + number);
			double meant = meantMinutes(dose.minutes(), day, luck);
			if (!luck.happens(this.home.owner().keeping().skips())) {
				double carried = carried(morning, walks, hours[number]);
				walks.add(walked(hours[number], meant, carried, tolerance,
						this.home.luck().on(Topic.SIGN, (long) day * MOST_WALKS + number)));
			}
		}
		return walks;
	}

	/**
	 * What they came to.
	 * @param morning what the dog woke up with
	 * @param walks what was walked
	 * @param tolerance its tolerance today, rested, in minutes
	 * @return the loads
	 */
	static DayLoads loads(Morning morning, List<Walked> walks, double tolerance) {
		if (walks.isEmpty()) {
			return new DayLoads(0, morning.lastLoad(), morning.lastHour());
		}
		double greatest = walks.stream().mapToDouble(Walked::load).max().orElseThrow();
		Walked last = walks.get(walks.size() - 1);
		return new DayLoads(greatest / tolerance, last.load(), last.hour());
	}

	private double meantMinutes(double asked, int day, Luck luck) {
		Keeping keeping = this.home.owner().keeping();
		boolean weekend = Household.ENROLLED.plusDays(day).getDayOfWeek().getValue() > 5;
		double stretch = Math.exp(keeping.stretch() + keeping.scatter() * luck.gaussian());
		double cut = luck.happens(CUT_SHORT) ? luck.between(0.4, 0.9) : 1;
		return Math.max(1, asked * stretch * cut * (weekend ? keeping.weekend() : 1));
	}

	private double carried(Morning morning, List<Walked> before, double hour) {
		if (before.isEmpty()) {
			return morning.carriedFromYesterday(hour);
		}
		Walked last = before.get(before.size() - 1);
		return morning.fatigue().left(last.load(), hour - last.hour());
	}

	private Walked walked(double hour, double meant, double carried, double tolerance, Luck luck) {
		Owner owner = this.home.owner();
		double firstSign = tolerance * Math.exp(this.home.body().signScatter() * luck.logistic());
		double signMinute = Math.max(0.5, firstSign - carried);
		boolean hidden = luck.happens(this.home.body().hides());
		boolean sharp = luck.happens(owner.seeing().noticing((carried + meant) / firstSign));
		double seen = Math.min(meant, signMinute + luck.exponential(owner.seeing().lagMinutes()));
		double home = luck.happens(owner.keeping().turnsBack()) ? luck.between(2, 6) : Double.POSITIVE_INFINITY;
		if (meant <= signMinute || hidden || !sharp) {
			return new Walked(hour, meant, carried + meant, (carried + meant) / firstSign, Double.NaN);
		}
		double minutes = Math.min(meant, seen + home);
		return new Walked(hour, minutes, carried + minutes, (carried + minutes) / firstSign, seen);
	}

}
