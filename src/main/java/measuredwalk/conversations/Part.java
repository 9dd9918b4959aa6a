package measuredwalk.conversations;

import measuredwalk.signs.Coded;

/**
 * A part of a sentence that the program puts together; its words stand in
 * {@code parts.yaml}. What is filled in is told there by its use.
 */
public enum Part implements Coded {

	/** Minutes: the figure, and the number that chooses its plural. */
	MINUTES,
	/** From one amount to another. */
	RANGE,
	/** '(0) (0,choice,0#walks|1#walk|1<walks)'. */
	WALKS,
	/** '(0) metres'. */
	METRES,
	/** '(0) km'. */
	KILOMETRES,
	/** '(0) yards'. */
	YARDS,
	/** '(0) (1,choice,0#miles|1#mile|1<miles)'. */
	MILES,
	/** 'about (0)'. */
	ABOUT,
	/** 'a walk'. */
	A_WALK,
	/** '(0) (1)': a walk and what made it harder. */
	WITH_LOADS,
	/** '(0) (1)'. */
	ON_DAY,
	/** '(0) at (1)'. */
	AT_TIME,
	/** 'today'. */
	TODAY,
	/** 'yesterday'. */
	YESTERDAY,
	/** 'on (0) (1) (2)'. */
	DATE,
	/** '(0) (1) (2)', as in 'for Saturday 5 March'. */
	DATE_ALONE,
	/** 'this morning'. */
	THIS_MORNING,
	/** 'yesterday morning'. */
	YESTERDAY_MORNING,
	/** 'morning'. */
	MORNING,
	/** 'loose after (0)'. */
	LOOSE_AFTER,
	/** '(0), (1)'. */
	PLACE,
	/** '(0) (1)'. */
	LIMB_AND_SIDE,
	/** '(0)'. */
	SIDE_ALONE,
	/** '(0) from the start'. */
	FROM_THE_START,
	/** '(0) after (1)'. */
	AFTER_MINUTES,
	/** '(0) (1)'. */
	SEEN_WHEN,
	/** '(0) and (1)'. */
	AND,
	/** '(0) or (1)'. */
	OR,
	/** 'your vet's usual number'. */
	USUAL_NUMBER,
	/** '(0) (out of hours (1))'. */
	OUT_OF_HOURS,
	/** 'your dog'. */
	YOUR_DOG,
	/** 'something serious'. */
	SOMETHING_SERIOUS,
	/** '(0,choice,0#none|0<(0)) of (1) (1,choice,0#walks|1#walk|1<walks) up to (2)'. */
	WALKS_UP_TO,
	/** '(0,choice,0#none|0<(0)) of (1) (1,choice,0#walks|1#walk|1<walks) of (2)'. */
	WALKS_BETWEEN,
	/** '(0,choice,0#none|0<(0)) of (1) (1,choice,0#walks|1#walk|1<walks) over (2)'. */
	WALKS_OVER,
	/** '(0) of (1)': walks and the minutes of each. */
	WALKS_OF,
	/** '(0,choice,0#none|0<(0))': days with signs. */
	DAYS_WITH_SIGNS,
	/** '(0) of (1)': days with walks. */
	DAYS_WITH_WALKS,
	/** '(0,choice,0#none|0<(0)) of (1)': mornings. */
	WORSE_MORNINGS,
	/** '(0) and on (1)'. */
	AND_ON,
	/** '(0,choice,0#none|0<(0)) of (1) (1,choice,0#mornings|1#morning|1<mornings)'. */
	MORNINGS,
	/** 'less than 1 in 20'. */
	CHANCE_SMALL,
	/** 'about (0) in 20'. */
	CHANCE,
	/** 'more than 19 in 20'. */
	CHANCE_LARGE,
	/** ', (0)'. */
	OF_MINUTES,
	/** '(0) to (1)'. */
	UNTIL,
	/** 'Mondays'. */
	MONDAY,
	/** 'Tuesdays'. */
	TUESDAY,
	/** 'Wednesdays'. */
	WEDNESDAY,
	/** 'Thursdays'. */
	THURSDAY,
	/** 'Fridays'. */
	FRIDAY,
	/** 'Saturdays'. */
	SATURDAY,
	/** 'Sundays'. */
	SUNDAY,
	/** 'Both of them'. */
	BOTH,
	/** 'All of them'. */
	ALL,
	/** 'Keep both'. */
	KEEP_BOTH,
	/** 'Only (0)'. */
	ONLY,
	/** 'Yes, the same'. */
	SAME_WALK,
	/** 'No, another walk'. */
	ANOTHER_WALK,
	/** 'It is not new'. */
	NOT_NEW,
	/** 'It is new today'. */
	NEW_TODAY,
	/** 'It is new and the foot will not go flat'. */
	NEW_NOT_FLAT,
	/** 'Keep it for the clinic'. */
	KEEP_FOR_CLINIC,
	/** 'text', behind the command for a copy. */
	AS_TEXT,
	/** 'Say vet'. */
	VET,
	/** 'Say clinic'. */
	CLINIC,
	/** 'Kilometres'. */
	IN_KILOMETRES,
	/** 'Miles'. */
	IN_MILES

}
