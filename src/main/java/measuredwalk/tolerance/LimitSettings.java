package measuredwalk.tolerance;

/**
 * The clinical limits, each a default that no trial in dogs has tested.
 *
 * @param restDays days of rest after a bad morning (C, handouts)
 * @param restShare share of the last suggestion that a rest day allows (C/H)
 * @param wayBack factor a day on the way back, after a clear morning (C)
 * @param growth factor on the best suggestion of one to two weeks ago: about ten percent
 * a week (C; convention, Buist 2008, AJSM 36:33 found no difference of 10 and 24 percent)
 * @param growthFrom youngest suggestion, in days, that growth is measured against
 * @param growthTo oldest such suggestion, in days
 * @param clearMornings clear mornings that a step up needs (C)
 * @param medicineHoldDays days without a step up after new pain medicine (C)
 * @param ceiling multiple of the plan until a clinician sets another plan (C)
 * @param toldBeforeCeilingLifts days with signs on walks or in the morning, told more
 * than a week ago, after which the clinic's maximum alone is the ceiling (S)
 * @param weekly factor on the seven days before (H; Nielsen 2014, JOSPT 44:739)
 * @param peak factor on the dog's own mean day of the last two weeks (B; Lee 2021, J Anim
 * Sci)
 * @param floorMinutes the least walk, in minutes (C)
 * @param floorMost the floor never asks for more than this, in minutes (C)
 * @param floorShare share of the median tolerance for the floor between the two (C)
 * @param smallestStep changes under this many minutes are not made (C)
 * @param smallestShare changes under this share are not made (C)
 * @param surgeryDays days after surgery with the clinic's plan only (C)
 */
public record LimitSettings(int restDays, double restShare, double wayBack, double growth, int growthFrom, int growthTo,
		int clearMornings, int medicineHoldDays, double ceiling, int toldBeforeCeilingLifts, double weekly, double peak,
		double floorMinutes, double floorMost, double floorShare, double smallestStep, double smallestShare,
		int surgeryDays) {

	/**
	 * Minutes raised by a factor, but always by one step: in whole minutes a short walk
	 * could otherwise never grow.
	 * @param minutes the minutes
	 * @param factor the factor
	 * @return the minutes after
	 */
	double raised(double minutes, double factor) {
		return Math.max(minutes * factor, minutes + this.smallestStep);
	}

	static LimitSettings standard() {
		return new LimitSettings(2, 0.6, 1.15, 1.15, 7, 14, 3, 14, 1.5, 2, 1.30, 1.5, 5, 12, 0.4, 1, 0.05, 84);
	}

}
