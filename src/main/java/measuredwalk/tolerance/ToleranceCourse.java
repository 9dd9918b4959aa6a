package measuredwalk.tolerance;

import java.time.LocalDate;

import measuredwalk.tolerance.filter.GridLaw;
import org.jspecify.annotations.Nullable;

/**
 * One dog followed day by day: told events in order of their days, it answers for any day
 * from the last one told. It keeps what {@link ToleranceModel} would replay, so that a
 * long journal need not be replayed for every question. Not for use by several threads.
 */
public final class ToleranceCourse {

	private final Parts parts;

	private final Planner planner;

	private Standing standing;

	private Evening before;

	private DayFacts today;

	private @Nullable DayPlan plan;

	ToleranceCourse(Parts parts, ToleranceEvent.DogEnrolled enrolled) {
		this.parts = parts;
		this.planner = new Planner(parts);
		this.standing = Standing.of(enrolled);
		this.before = Evening.beforeEnrolment(this.standing, parts);
		this.today = DayFacts.none(enrolled.date());
	}

	private ToleranceCourse(ToleranceCourse trunk) {
		this.parts = trunk.parts;
		this.planner = trunk.planner;
		this.standing = trunk.standing;
		this.before = trunk.before.withOwnPast();
		this.today = trunk.today;
	}

	/**
	 * The same course as far as it is told by now, to be told of more by itself.
	 * @return a course that goes its own way from here on
	 */
	public ToleranceCourse branch() {
		return new ToleranceCourse(this);
	}

	/**
	 * Takes in one more event.
	 * @param event the event, not before the day of the last one
	 * @throws IllegalArgumentException when its day is before the last one's, or the dog
	 * is enrolled again
	 */
	public void tell(ToleranceEvent event) {
		advance(event.date());
		if (event instanceof ToleranceEvent.WalkTaken walk) {
			this.today = this.today.withWalk(walk);
			return;
		}
		this.plan = null;
		if (event instanceof ToleranceEvent.MorningSeen morning) {
			this.today = this.today.withMorning(morning);
		}
		else if (event instanceof ToleranceEvent.PlanChanged change) {
			this.standing = this.standing.with(change);
		}
		else if (event instanceof ToleranceEvent.MedicationChanged change) {
			this.standing = this.standing.with(change);
		}
		else {
			throw new IllegalArgumentException("the dog was enrolled already");
		}
	}

	/**
	 * The suggestion for a day.
	 * @param date the day, not before the last event's
	 * @return the suggestion for what is left of the day
	 * @throws IllegalArgumentException when the day is before the last event's
	 */
	public Suggestion suggest(LocalDate date) {
		advance(date);
		DayPlan planned = planned();
		DayWalks walks = this.planner.walks(this.before, this.today, this.standing.plan());
		return new Answering(this.parts).answer(planned, walks, this.today);
	}

	/**
	 * What-if answers for a day.
	 * @param date the day, not before the last event's
	 * @return the chances for the next walk of that day
	 * @throws IllegalArgumentException when the day is before the last event's
	 */
	public Chances chances(LocalDate date) {
		advance(date);
		DayWalks walks = this.planner.walks(this.before, this.today, this.standing.plan());
		boolean first = walks.evidence().isEmpty();
		double gap = DayWalks.usualGap(this.standing.plan().walksPerDay(), this.parts.settings().walking());
		double carried = first ? 0 : walks.last().load() * CarryOver.of(this.parts.settings().walking()).left(gap);
		DayPlan planned = planned();
		GridLaw today = this.parts.filter().today(planned.belief(), walks).widened(planned.widening());
		return new Chances(today, carried);
	}

	/**
	 * Plans a day on which more walking is wished for.
	 * @param today the day of asking, not before the last event's
	 * @param day the long day, today or at most 14 days ahead
	 * @param minutes minutes wished for on it, all walks together, above 0
	 * @return how to spread it
	 * @throws IllegalArgumentException when a day or the minutes are out of range
	 */
	public LongDay longDay(LocalDate today, LocalDate day, double minutes) {
		advance(today);
		return new LongDayPlanner(this.parts, planned(), day, minutes).plan();
	}

	/** The chance, before it is told, that a sign will be told of a walk. */
	double chanceOfSign(ToleranceEvent.WalkTaken walk) {
		advance(walk.date());
		DayWalks walks = this.planner.walks(this.before, this.today.withWalk(walk), this.standing.plan());
		double load = walks.last().load();
		return this.parts.filter().forecast(planned().belief()).chance(load);
	}

	/** The days since enrolment with the given one, as far as it is told. */
	PastDays pastWith(LocalDate date) {
		advance(date);
		return this.planner.close(planned(), this.before, this.today).past();
	}

	private DayPlan planned() {
		DayPlan planned = this.plan;
		if (planned == null) {
			planned = this.planner.plan(this.before, this.today, this.standing);
			this.plan = planned;
		}
		return planned;
	}

	private void advance(LocalDate date) {
		if (date.isBefore(this.today.date())) {
			throw new IllegalArgumentException("days must not run back: " + date + " comes after " + this.today.date());
		}
		while (this.today.date().isBefore(date)) {
			this.before = this.planner.close(planned(), this.before, this.today);
			this.today = DayFacts.none(this.today.date().plusDays(1));
			this.plan = null;
		}
	}

}
