package measuredwalk.tolerance;

/**
 * The clinical limits. Ranges, defaults, grades and sources stand in
 * {@link DosingSetting}.
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

	/** Growth is a matter of weeks: days 7 to 14 are one week, a week ago. */
	private static final int YOUNGEST = 7;

	private static final int OLDEST = 14;

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

	static LimitSettings of(DosingSettings chosen) {
		return new LimitSettings(chosen.whole(DosingSetting.REST_DAYS), chosen.value(DosingSetting.REST_SHARE),
				chosen.value(DosingSetting.WAY_BACK), chosen.value(DosingSetting.GROWTH), YOUNGEST, OLDEST,
				chosen.whole(DosingSetting.CLEAR_MORNINGS), chosen.whole(DosingSetting.MEDICINE_HOLD_DAYS),
				chosen.value(DosingSetting.CEILING), chosen.whole(DosingSetting.TOLD_BEFORE_CEILING_LIFTS),
				chosen.value(DosingSetting.WEEKLY), chosen.value(DosingSetting.PEAK),
				chosen.value(DosingSetting.FLOOR_MINUTES), chosen.value(DosingSetting.FLOOR_MOST),
				chosen.value(DosingSetting.FLOOR_SHARE), chosen.value(DosingSetting.SMALLEST_STEP),
				chosen.value(DosingSetting.SMALLEST_SHARE), chosen.whole(DosingSetting.SURGERY_DAYS));
	}

}
