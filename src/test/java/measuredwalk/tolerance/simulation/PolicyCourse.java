package measuredwalk.tolerance.simulation;

import java.time.LocalDate;

import measuredwalk.tolerance.ToleranceEvent;

/** A policy with one dog. */
interface PolicyCourse {

	/**
	 * Something was told. It comes when it is told, which for a late answer is days after
	 * the day that it speaks of.
	 * @param event what was told
	 */
	void accept(ToleranceEvent event);

	/**
	 * The suggestion of a morning.
	 * @param date the day
	 * @param insight the truth, for the oracle alone
	 * @return the suggestion
	 */
	Dose suggest(LocalDate date, Insight insight);

}
