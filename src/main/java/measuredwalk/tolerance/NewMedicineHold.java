package measuredwalk.tolerance;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/** No step up for some days after a new pain medicine, even if the dog looks great. */
record NewMedicineHold(LimitSettings settings) implements Limit {

	private static final int WEEK = 7;

	@Override
	public double most(Situation situation) {
		LocalDate started = situation.standing().medicineStarted();
		if (started == null) {
			return NONE;
		}
		int daysAgo = (int) ChronoUnit.DAYS.between(started, situation.date());
		return (daysAgo < this.settings.medicineHoldDays()) ? situation.bestSuggested(daysAgo + 1, daysAgo + WEEK)
				: NONE;
	}

	@Override
	public Reason reason() {
		return Reason.HOLD_AFTER_NEW_MEDICINE;
	}

}
