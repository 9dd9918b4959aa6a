package measuredwalk.tolerance;

import measuredwalk.signs.Coded;

/**
 * Why a suggestion is what it is. The codes are stable: other programs may rely on them.
 */
public enum Reason implements Coded {

	/** Signs that need a vet now. */
	EMERGENCY_SIGNS,

	/** Signs for which the clinic should be called today. */
	CALL_THE_CLINIC_TODAY,

	/** Surgery was within twelve weeks: only the clinic's plan counts. */
	ONLY_THE_PLAN_AFTER_SURGERY,

	/** The dog still grows: only the clinic's plan counts. */
	ONLY_THE_PLAN_WHILE_GROWING,

	/** A bad morning today or yesterday: less, in short walks. */
	REST_AFTER_A_BAD_MORNING,

	/** After rest, back by steps, each after a clear morning. */
	WAY_BACK_AFTER_REST,

	/** A flare is likely. */
	FLARE_LIKELY,

	/** Signs were seen on the last days' walks. */
	SIGNS_ON_RECENT_WALKS,

	/** This morning was a little worse than usual: no step up. */
	MORNING_A_LITTLE_WORSE,

	/** A longer walk has to wait for clear mornings. */
	WAITING_FOR_CLEAR_MORNINGS,

	/** Growth is limited to about ten percent a week. */
	STEP_UP_LIMITED,

	/** No step up just after a new medicine. */
	HOLD_AFTER_NEW_MEDICINE,

	/** Far above the plan: a clinician should confirm first. */
	FAR_ABOVE_THE_PLAN,

	/** The clinic's maximum. */
	CLINIC_MAXIMUM,

	/** The week's total grows enough already. */
	WEEKLY_TOTAL,

	/** No day far above the dog's own usual. */
	NO_PEAK_DAY,

	/** Nothing was told since the last suggestion, so it is not raised. */
	NOTHING_HEARD_SINCE,

	/** The least walk that keeps a dog moving. */
	LEAST_WALK,

	/** The clinic's minimum. */
	CLINIC_MINIMUM,

	/** Too small a change to make. */
	SMALL_CHANGE_NOT_MADE,

	/** An earlier walk of today is still in the legs. */
	EARLIER_WALK_TODAY,

	/** A walk of today or of the last days was harder, and counts for more. */
	HARDER_WALK_COUNTS_MORE,

	/** All of today's walks were taken. */
	WALKS_OF_TODAY_DONE,

	/** A new dog: more careful in the first weeks. */
	CAREFUL_WITH_A_NEW_DOG,

	/** Nothing was told for more than a week: the belief is old. */
	NOT_HEARD_FOR_LONG,

	/** Nothing is known yet but the clinic's plan. */
	STARTING_FROM_THE_PLAN,

	/** What was told of walks and mornings says that this length is fine. */
	LEARNED_FROM_WALKS

}
