package measuredwalk.tolerance.simulation;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;

import measuredwalk.signs.Moment;
import measuredwalk.signs.Severity;
import measuredwalk.signs.Sign;
import measuredwalk.signs.SignKind;
import measuredwalk.tolerance.Suggestion;
import measuredwalk.tolerance.ToleranceEvent;
import measuredwalk.tolerance.ToleranceEvent.DogEnrolled;
import measuredwalk.tolerance.ToleranceEvent.WalkTaken;
import measuredwalk.tolerance.ToleranceModel;
import measuredwalk.tolerance.ToleranceSettings;
import measuredwalk.tolerance.WalkPlan;

/**
 * A dog that obeys the model's own equations to the letter, for calibration by
 * simulation: one walk a day, each told with the right minutes, mild signs only, mornings
 * not told (their likelihood is weakened on purpose and has no law to draw from).
 */
final class ModelDog {

	private static final WalkPlan PLAN = new WalkPlan(20, 1, 3, 45);

	private static final LocalTime HOUR = LocalTime.of(9, 0);

	/**
	 * Walks from well within to well beyond what such a dog tolerates, so that both ends
	 * tell something.
	 */
	private static final Range WALKS = new Range(12, 50);

	private final ToleranceSettings laws;

	private final Luck luck;

	private final double sees;

	private final double imagines;

	private double fresh;

	private boolean flare;

	private double today;

	private ModelDog(ToleranceSettings laws, Luck luck) {
		this.laws = laws;
		this.luck = luck;
		this.sees = pick(laws.owners().seen(), laws.owners().seenPrior());
		this.imagines = pick(laws.owners().mildFalseAlarms(), laws.owners().mildFalseAlarmsPrior());
		this.fresh = Math.log(PLAN.planMinutes() * laws.drift().priorFactor())
				+ laws.drift().priorDeviation() * luck.gaussian();
		this.flare = luck.happens(laws.drift().priorFlare());
	}

	/**
	 * What the model said of a dog, and what was true.
	 *
	 * @param said the model's suggestion on the last morning
	 * @param tolerance the dog's tolerance on that day, in minutes
	 */
	record Answered(Suggestion said, double tolerance) {
	}

	/**
	 * Lets a dog live, tells the model of it, and asks it on the last morning.
	 * @param laws the model's equations, which the dog obeys
	 * @param model who is told
	 * @param days days of walks before
	 * @param luck the dog's luck
	 * @return what was said and what was true
	 */
	static Answered live(ToleranceSettings laws, ToleranceModel model, int days, Luck luck) {
		ModelDog dog = new ModelDog(laws, luck);
		LocalDate enrolled = Household.ENROLLED;
		List<ToleranceEvent> history = new ArrayList<>();
		history.add(new DogEnrolled(enrolled, PLAN, null, null, true, null));
		dog.overnight(0);
		double load = 0;
		double hoursSince = 24;
		for (int day = 1; day <= days; day++) {
			dog.overnight(load);
			double carried = load * laws.walking().carryOver()
					* Math.pow(2, -hoursSince / laws.walking().carryOverHalving());
			double minutes = Math.rint(WALKS.drawByRatio(luck));
			history.add(dog.walk(enrolled.plusDays(day), minutes, carried));
			load = carried + minutes;
			hoursSince = 24 - minutes / 60;
		}
		dog.overnight(load);
		return new Answered(model.suggest(history, enrolled.plusDays(days + 1)), Math.exp(dog.today));
	}

	/** Flare and drift of a night, then the luck of the day. */
	private void overnight(double load) {
		double flareChance = this.flare ? this.laws.flares().stayChance() : this.laws.flares().startChance()
				+ this.laws.flares().afterOverloadChance() * passes(load / this.laws.flares().overload());
		boolean drops = this.luck.happens(this.laws.drift().dropChance());
		this.fresh += drops ? this.laws.drift().dropMean() + this.laws.drift().dropDeviation() * this.luck.gaussian()
				: this.laws.drift().dailyDeviation() * this.luck.gaussian();
		this.flare = this.luck.happens(flareChance);
		this.today = this.fresh + (this.flare ? Math.log(this.laws.flares().factor()) : 0)
				+ this.laws.walking().dayDeviation() * this.luck.gaussian();
	}

	private double passes(double load) {
		return (load > 0) ? NormalLaw.below((Math.log(load) - this.today) / this.laws.walking().onsetDeviation()) : 0;
	}

	private WalkTaken walk(LocalDate date, double minutes, double carried) {
		double firstSign = Math.exp(this.today + this.laws.walking().onsetDeviation() * this.luck.gaussian());
		double imagined = minutes * this.luck.uniform();
		List<Sign> signs = List.of();
		if (carried + minutes >= firstSign && this.luck.happens(this.sees)) {
			signs = List.of(sign(Math.max(0, firstSign - carried), minutes));
		}
		else if (this.luck.happens(this.imagines)) {
			signs = List.of(sign(imagined, minutes));
		}
		return new WalkTaken(date, HOUR, minutes, minutes, minutes, null, signs, false);
	}

	/**
	 * A sign at a minute, told in one of three ways, each of which parts the walk into
	 * windows that the model can know.
	 */
	private Sign sign(double minute, double minutes) {
		double window = this.laws.walking().onsetWindow();
		double way = this.luck.uniform();
		Double onset = null;
		Moment when = null;
		if (way < 0.4) {
			onset = minutes - window * Math.floor((minutes - minute) / window);
		}
		else if (way < 0.7) {
			when = (minute < minutes / 3) ? Moment.START : (minute < 2 * minutes / 3) ? Moment.MIDDLE : Moment.END;
		}
		return new Sign(SignKind.SLOWING, true, Severity.MILD, null, null, when, onset);
	}

	private double pick(double[] values, double[] chances) {
		double left = this.luck.uniform();
		for (int index = 0; index < values.length - 1; index++) {
			left -= chances[index];
			if (left < 0) {
				return values[index];
			}
		}
		return values[values.length - 1];
	}

}
