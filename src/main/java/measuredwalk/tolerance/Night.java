package measuredwalk.tolerance;

import measuredwalk.tolerance.ToleranceEvent.MorningSeen;
import org.jspecify.annotations.Nullable;

/**
 * A night and what was told of the morning after it.
 *
 * @param before the evening before
 * @param today what was told of the day; its walks are not looked at
 * @param standing what stands about the dog
 * @param grade how the morning was, or null when not told
 */
record Night(Evening before, DayFacts today, Standing standing, @Nullable MorningGrade grade) {

	static Night of(Evening before, DayFacts today, Standing standing) {
		MorningSeen told = today.morning();
		return new Night(before, today, standing, (told != null) ? MorningGrade.of(told, before.usual()) : null);
	}

	/**
	 * The likelihood of a morning's grade.
	 * @param settings the constants
	 * @param seen the grade, or null when not told
	 * @return the likelihood, or null when not told
	 */
	@Nullable MorningLikelihood likelihood(ToleranceSettings settings, @Nullable MorningGrade seen) {
		MorningSeen told = this.today.morning();
		if (told == null || seen == null) {
			return null;
		}
		double power = told.late() ? settings.owners().latePower() : 1;
		return new MorningLikelihood(settings.mornings(), this.before.usual(), seen, power);
	}

	boolean afterMedicine(ToleranceSettings settings) {
		return this.standing.changedMedicineWithin(settings.drift().afterMedicineDays(), this.today.date());
	}

	double widening(ToleranceSettings settings) {
		return this.before.check().widening(settings.check());
	}

	UsualMornings usual(ToleranceSettings settings) {
		return (this.grade != null) ? this.before.usual().with(this.grade, settings.mornings()) : this.before.usual();
	}

	/** The gravest call for the clinic in what was told since yesterday. */
	Alarm alarm() {
		boolean onMedicine = !this.standing.medicines().isEmpty();
		return Alarm.of(this.before.facts().withoutMorning(), onMedicine).worse(Alarm.of(this.today, onMedicine));
	}

}
