package measuredwalk.tolerance;

import measuredwalk.signs.Basis;
import measuredwalk.signs.Coded;
import measuredwalk.signs.Grade;

/**
 * A number of the dosing rule that a clinic may change: how much chance of trouble is
 * allowed, the clinical limits, and what makes a minute count for more. Grades are those
 * of the clinical rules: A dog trial, B dog cohort or survey, C expert opinion or common
 * practice, H borrowed from people, S chosen by simulation. No trial in dogs has tested
 * any of these numbers. The codes are stable, to be stored.
 */
public enum DosingSetting implements Coded {

	/** Largest chance that any of a day's walks passes the tolerance. */
	TROUBLE("chance", 0.10, 0.30, 0.22, Grade.S,
			"value judgement: one minute too many costs as much as three too few; docs/decisions/0008"),

	/** The same for a new dog. */
	TROUBLE_WHEN_NEW("chance", 0.05, 0.30, 0.18, Grade.S, "common practice; docs/decisions/0008"),

	/** Days that a dog counts as new. */
	NEW_DAYS("days", 0, 90, 30, Grade.C, "common practice, no source"),

	/** Days of rest after a bad morning. */
	REST_DAYS("days", 0, 3, 2, Grade.C, "clinic handouts; never beyond 3 days, White 2020, PLoS One 15:e0231306"),

	/** Share of the suggestion before it that a rest day allows. */
	REST_SHARE("share", 0.3, 1, 0.6, Grade.C, "clinic handouts; Millis and Levine 2014 (from memory)"),

	/** Factor a day on the way back, after a clear morning. */
	WAY_BACK("factor", 1, 1.15, 1.15, Grade.C, "clinic handouts"),

	/** Factor on the best suggestion of one to two weeks ago. */
	GROWTH("factor", 1, 1.25, 1.15, Grade.C,
			"convention; Buist 2008, AJSM 36:33, found no difference of 10 and 24 percent a week"),

	/** Clear mornings that a step up needs. */
	CLEAR_MORNINGS("mornings", 0, 7, 3, Grade.B,
			"Conzemius and Evans 2012, JAVMA 241:1314: owners report improvement "
					+ "on placebo, so that good news counts less than bad"),

	/** Days without a step up after new pain medicine. */
	MEDICINE_HOLD_DAYS("days", 0, 42, 14, Grade.C, "common practice, no source"),

	/** Multiple of the plan until a clinician sets another plan. */
	CEILING("factor", 1, 3, 1.5, Grade.C, "common practice, no source"),

	/** Days with signs told after which the clinic's maximum alone is the ceiling. */
	TOLD_BEFORE_CEILING_LIFTS("days", 1, 30, 2, Grade.S, "docs/decisions/0008"),

	/** Factor on the total of the best week of the last four. */
	WEEKLY("factor", 1, 2, 1.30, Grade.H, "Nielsen 2014, JOSPT 44:739"),

	/** Factor on the dog's own mean day of two weeks. */
	PEAK("factor", 1, 2, 1.5, Grade.B, "Lee 2021, J Anim Sci: twice weekdays at weekends in one cohort"),

	/** The least walk. */
	FLOOR_MINUTES("minutes", 1, 15, 5, Grade.C, "clinic handouts: frail dogs begin at 5 minutes"),

	/** The floor of strong dogs. */
	FLOOR_MOST("minutes", 5, 30, 12, Grade.C, "common practice; Greene 2013, JAVMA 242:1528, association (B)"),

	/** Share of the median tolerance for the floor between the two. */
	FLOOR_SHARE("share", 0, 0.6, 0.4, Grade.C, "common practice, no source"),

	/** Changes under this are not made. */
	SMALLEST_STEP("minutes", 1, 5, 1, Grade.C, "whole minutes; common practice"),

	/** Changes under this share are not made. */
	SMALLEST_SHARE("share", 0, 0.2, 0.05, Grade.C, "common practice, no source"),

	/** Days after surgery with the clinic's plan only. */
	SURGERY_DAYS("days", 0, 365, 84, Grade.C, "common practice, no source"),

	/** What a minute at a trot or faster than usual counts for. */
	FAST_PACE("factor", 1, 3, 1.3, Grade.C,
			"that it loads more is grade A, Beraud 2010, VCOT 23:87; the number is not"),

	/** What a minute on hills counts for. */
	HILLS("factor", 1, 3, 1.2, Grade.C, "common practice, no source"),

	/** What a minute on sand, snow, deep mud or uneven ground counts for. */
	ROUGH_GROUND("factor", 1, 3, 1.2, Grade.C, "common practice, no source"),

	/** What a minute with stairs or jumps counts for. */
	STAIRS("factor", 1, 3, 1.15, Grade.C, "common practice, no source"),

	/** What a minute of ball or rough play counts for. */
	PLAY("factor", 1, 3, 1.4, Grade.C, "common practice, no source"),

	/** What a minute on a warm day, from 20 degrees, counts for. */
	WARM_DAY("factor", 1, 3, 1.15, Grade.C, "common practice; safety is another matter, Hall 2022, Vet Sci 9:231");

	private final String unit;

	private final double least;

	private final double most;

	private final double standard;

	private final Grade grade;

	private final String source;

	DosingSetting(String unit, double least, double most, double standard, Grade grade, String source) {
		this.unit = unit;
		this.least = least;
		this.most = most;
		this.standard = standard;
		this.grade = grade;
		this.source = source;
	}

	/**
	 * What it is about.
	 * @return the group
	 */
	public DosingGroup group() {
		return switch (this) {
			case TROUBLE, TROUBLE_WHEN_NEW, NEW_DAYS -> DosingGroup.DOSING_RULE;
			case REST_DAYS, REST_SHARE, WAY_BACK, GROWTH, CLEAR_MORNINGS, MEDICINE_HOLD_DAYS, CEILING,
					TOLD_BEFORE_CEILING_LIFTS, WEEKLY, PEAK, FLOOR_MINUTES, FLOOR_MOST, FLOOR_SHARE, SMALLEST_STEP,
					SMALLEST_SHARE, SURGERY_DAYS ->
				DosingGroup.LIMITS;
			case FAST_PACE, HILLS, ROUGH_GROUND, STAIRS, PLAY, WARM_DAY -> DosingGroup.LOAD_FACTORS;
		};
	}

	/**
	 * What it is counted in.
	 * @return the unit, such as {@code days}
	 */
	public String unit() {
		return this.unit;
	}

	/**
	 * The least that a clinic may set.
	 * @return the least
	 */
	public double least() {
		return this.least;
	}

	/**
	 * The most that a clinic may set.
	 * @return the most
	 */
	public double most() {
		return this.most;
	}

	/**
	 * What it is until a clinic sets it.
	 * @return the default
	 */
	public double standard() {
		return this.standard;
	}

	/**
	 * What the default rests on.
	 * @return grade, source and until when they were checked
	 */
	public Basis basis() {
		return Basis.of(this.grade, this.source);
	}

	/**
	 * Whether a clinic may set it to a value.
	 * @param value the value, in the setting's unit
	 * @return true when it is in the range, and whole where it must be
	 */
	public boolean allows(double value) {
		return value >= this.least && value <= this.most && !(isWhole() && value != Math.rint(value));
	}

	/**
	 * Whether only whole numbers make sense.
	 * @return true for days and mornings
	 */
	public boolean isWhole() {
		return this.unit.equals("days") || this.unit.equals("mornings");
	}

}
