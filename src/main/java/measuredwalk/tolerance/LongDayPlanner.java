package measuredwalk.tolerance;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import measuredwalk.tolerance.LongDay.PlannedDay;
import measuredwalk.tolerance.LongDay.Why;

/**
 * Spreads a long day over more walks and over the days around it. No walk gets longer,
 * the day keeps under the peak and the week under its total; the two days before and
 * after give up what the long day takes, but not more than a rest day would.
 */
final class LongDayPlanner {

	/** Days to each side that make up for it (common practice, no source). */
	private static final int AROUND = 2;

	/** As many as a plan may have. */
	private static final int MOST_WALKS = 6;

	/** What is believed today says little of a day further off. */
	private static final int FURTHEST = 14;

	private static final int WEEK = 7;

	private final Parts parts;

	private final DayPlan plan;

	private final LocalDate date;

	private final double wanted;

	private final List<Why> reasons = new ArrayList<>();

	LongDayPlanner(Parts parts, DayPlan plan, LocalDate date, double wanted) {
		long ahead = ChronoUnit.DAYS.between(plan.situation().date(), date);
		if (ahead < 0 || ahead > FURTHEST) {
			throw new IllegalArgumentException("a long day must be today or at most 14 days ahead, not " + date);
		}
		if (!(wanted > 0 && wanted <= 1440)) {
			throw new IllegalArgumentException("minutes must be above 0 and at most 1440, not " + wanted);
		}
		this.parts = parts;
		this.plan = plan;
		this.date = date;
		this.wanted = wanted;
	}

	LongDay plan() {
		if (!isFree() || this.wanted <= usualTotal()) {
			this.reasons.add(isFree() ? Why.NO_MORE_THAN_USUAL : Why.NOT_NOW);
			return answer(List.of(ordinary(Math.min(this.wanted, usualTotal()))));
		}
		double most = atMost(atMost(this.wanted, peak(), Why.NO_PEAK_DAY), week(), Why.WEEKLY_TOTAL);
		PlannedDay longDay = split(Math.max(most, usualTotal()));
		if (longDay.walks() > decision().walks()) {
			this.reasons.add(Why.MORE_WALKS_NOT_LONGER_ONES);
		}
		return answer(withDaysAround(longDay));
	}

	private LongDay answer(List<PlannedDay> days) {
		this.reasons.add(Why.THAT_MORNING_DECIDES);
		double granted = days.stream()
			.filter((day) -> day.date().equals(this.date))
			.mapToDouble(PlannedDay::total)
			.sum();
		return new LongDay(this.date, this.wanted, granted, days, this.reasons);
	}

	private Decision decision() {
		return this.plan.decision();
	}

	private double usualTotal() {
		return decision().walks() * decision().minutes();
	}

	/** Whether the dosing rule may plan at all. */
	private boolean isFree() {
		return decision().advice() == Advice.USUAL
				&& !PlanOnly.applies(this.plan.situation(), this.parts.settings().limits());
	}

	private double atMost(double minutes, double most, Why why) {
		if (minutes <= most) {
			return minutes;
		}
		this.reasons.add(why);
		return most;
	}

	private double peak() {
		return new PeakDay(this.parts.settings().limits()).most(this.plan.situation()) * walksOfPlan();
	}

	/** What the week leaves when the days around give up all that they may. */
	private double week() {
		double shortest = this.parts.settings().limits().restShare() * usualTotal();
		int around = daysAround().size();
		double others = around * shortest + (WEEK - 1 - around) * usualTotal();
		return new WeeklyTotal(this.parts.settings().limits()).mostOfWeek(this.plan.situation()) - others;
	}

	private int walksOfPlan() {
		return this.plan.situation().plan().walksPerDay();
	}

	/** A usual day, or less of it in as many walks. */
	private PlannedDay ordinary(double total) {
		return new PlannedDay(this.date, decision().walks(), Math.max(1, Math.floor(total / decision().walks())));
	}

	/** As many walks as it takes, none longer than today's nor than so many allow. */
	private PlannedDay split(double total) {
		int walks = decision().walks();
		while (walks < MOST_WALKS && walks * longest(walks) < total) {
			walks++;
		}
		double minutes = Math.min(longest(walks), total / walks);
		if (minutes < Math.floor(total / walks)) {
			this.reasons.add(Why.NO_MORE_WALKS);
		}
		return new PlannedDay(this.date, walks, Math.max(1, Math.floor(minutes)));
	}

	private double longest(int walks) {
		double allowed = this.parts.settings().dosing().trouble();
		return Math.min(decision().minutes(), this.parts.dosing().forWholeDay(this.plan.today(), walks, allowed));
	}

	private List<LocalDate> daysAround() {
		List<LocalDate> around = new ArrayList<>();
		for (int days = -AROUND; days <= AROUND; days++) {
			LocalDate day = this.date.plusDays(days);
			if (days != 0 && day.isAfter(this.plan.situation().date())) {
				around.add(day);
			}
		}
		return around;
	}

	private List<PlannedDay> withDaysAround(PlannedDay longDay) {
		List<PlannedDay> days = new ArrayList<>(List.of(longDay));
		double extra = Math.max(0, longDay.total() - usualTotal()) / daysAround().size();
		double shortest = this.parts.settings().limits().restShare() * usualTotal();
		double each = Math.max(shortest, usualTotal() - extra) / decision().walks();
		double minutes = Math.max(Math.ceil(this.plan.situation().plan().minMinutes()), Math.floor(each));
		if (minutes < decision().minutes()) {
			this.reasons.add(Why.SHORTER_DAYS_AROUND);
			daysAround().forEach((day) -> days.add(new PlannedDay(day, decision().walks(), minutes)));
		}
		days.sort(Comparator.comparing(PlannedDay::date));
		return days;
	}

}
