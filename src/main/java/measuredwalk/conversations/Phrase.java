package measuredwalk.conversations;

import measuredwalk.signs.Coded;

/**
 * A thing that the bot can say without asking; its words stand in {@code replies.yaml}.
 */
public enum Phrase implements Coded {

	/** What it is and is not; the first words of all. */
	GREETING,
	/** Which of several dogs is meant? */
	WHICH_DOG,
	/** The chat followed other dogs until now: shall it keep them? */
	KEEP_BOTH,
	/** It keeps them. */
	KEPT_BOTH,
	/** It does not. */
	KEPT_ONE,
	/** The dog's plan. */
	PLAN,
	/** Whom to call. */
	WHOM_TO_CALL,
	/** Whom to call when no clinic's number is known. */
	WHOM_TO_CALL_WITHOUT_NUMBER,
	/** How to begin, for somebody who belongs to no household. */
	HOW_TO_BEGIN,
	/** A new dog was set up without a clinic. */
	BEGUN_WITHOUT_CLINIC,
	/** The chat joined a household. */
	JOINED,
	/** The chat belonged to the household already. */
	BACK_AGAIN,
	/** There is no such code. */
	UNKNOWN_CODE,
	/** Too many unknown codes came from this chat. */
	TOO_MANY_CODES,
	/** The code was good once. */
	EXPIRED_CODE,
	/** A staff chat gets alerts from now on. */
	STAFF_JOINED,
	/** One line of what was written down. */
	WRITTEN_DOWN,
	/** One line of what an entry says after a correction. */
	CHANGED,
	/** There is nothing to correct. */
	NOTHING_TO_CHANGE,
	/** What was taken back. */
	TAKEN_BACK,
	/** There is nothing to take back. */
	NOTHING_TO_TAKE_BACK,
	/** Today's walks. */
	SUGGESTION_TODAY,
	/** Today's walk when one is left. */
	SUGGESTION_ONE_LEFT,
	/** Several walks are left today. */
	SUGGESTION_SOME_LEFT,
	/** The walks of today are done. */
	SUGGESTION_DONE,
	/** The clinic's plan only. */
	SUGGESTION_PLAN_ONLY,
	/** Rest and call. */
	SUGGESTION_CALL,
	/** What to do if something is wrong. */
	IF_WRONG,
	/** The reasons, one by one. */
	WHY,
	/** On how many walks of what length a sign was seen. */
	EVIDENCE_WALKS,
	/** How many mornings were worse than usual. */
	EVIDENCE_MORNINGS,
	/** A walk that was asked about is within today's suggestion. */
	WHAT_IF_WITHIN,
	/** A walk that was asked about is more than today's suggestion. */
	WHAT_IF_TOO_MUCH,
	/** How to spread a longer day that is planned. */
	LONG_DAY,
	/** The days around it. */
	LONG_DAY_AROUND,
	/** The chance of the long walk at once being too much. */
	LONG_DAY_CHANCE_AT_ONCE,
	/** The chance of one of the planned walks being too much. */
	LONG_DAY_CHANCE,
	/** The day that is planned is no longer than others. */
	LONG_DAY_AS_USUAL,
	/** No longer day is planned while the dog rests or the clinic decides. */
	LONG_DAY_NOT_NOW,
	/** The heading of the log. */
	LOG,
	/** The log is empty. */
	LOG_EMPTY,
	/** A code for another carer. */
	SHARE,
	/** What can be said. */
	HELP,
	/** Messages end. */
	STOPPED,
	/** Messages go on. */
	STARTED_AGAIN,
	/** There is no such command. */
	UNKNOWN_COMMAND,
	/** A message was not understood, out of the blue. */
	NOT_UNDERSTOOD,
	/** Not understood for the second time: kept for the clinic, no more asking. */
	KEPT_FOR_CLINIC,
	/** A remark that needs no answer but a kind word. */
	NOTED,
	/** A question that only the clinic can answer. */
	ASK_CLINIC,
	/** Go now. */
	EMERGENCY,
	/** Call today. */
	SAME_DAY,
	/** Medicine in hand: wait for the clinic. */
	HOLD_MEDICINE,
	/** Which of two readings was meant. */
	WHICH_WAS_IT,
	/** Is the dragging new? */
	DRAGGING_NEW,
	/** Thanks for the answer about dragging. */
	DRAGGING_NOTED,
	/** No walk was written down. */
	NO_WALK,
	/** The heading of all that counts in a dog's record. */
	EXPORT,
	/** In which form shall the record be? */
	EXPORT_FORM,
	/** Here are pages to read. */
	EXPORT_PDF,
	/** Here is a table. */
	EXPORT_CSV,
	/** The file could not be made or sent. */
	EXPORT_NOT_MADE,
	/** What erasing means and how to confirm it. */
	ERASE,
	/** The dog's data are erased. */
	ERASED,
	/** Nothing is erased after all. */
	NOT_ERASED,
	/** Another carer erased the dog's data. */
	ERASED_BY_ANOTHER,
	/** Is that the walk that another carer told of? */
	SAME_WALK,
	/** It is kept as one walk. */
	SAME_WALK_JOINED,
	/** It is kept as a walk of its own. */
	SAME_WALK_APART,
	/** Another carer has told of the morning. */
	ALREADY_TOLD_MORNING,
	/** Another carer has told of the morning, of one of several dogs. */
	ALREADY_TOLD_MORNING_OF,
	/** Another carer has told of the walk. */
	ALREADY_TOLD_WALK,
	/** A carer has left. */
	LEFT,
	/** The last carer wants to leave: what becomes of the log? */
	LEAVE_LAST,
	/** When the bot asks. */
	HOURS,
	/** When it asks about walks. */
	HOURS_WALKS,
	/** It does not know yet when the dog walks. */
	HOURS_NO_WALK_TIMES,
	/** It does not ask about walks. */
	HOURS_NO_WALK_QUESTIONS,
	/** It asks on every day. */
	HOURS_EVERY_DAY,
	/** The days on which it does not ask. */
	HOURS_DAYS_OFF,
	/** A picture comes on Sundays. */
	HOURS_PICTURE,
	/** No picture comes on Sundays. */
	HOURS_NO_PICTURE,
	/** The hours are changed. */
	HOURS_CHANGED,
	/** A wish about the hours was not understood. */
	HOURS_NOT_UNDERSTOOD,
	/** The one reminder of the morning check-in. */
	REMINDER_MORNING,
	/** The one reminder of the check-in after a walk. */
	REMINDER_WALK,
	/** The end of a check-in. */
	CHECK_IN_DONE,
	/** A voice message came, which the bot cannot hear. */
	CANNOT_LISTEN,
	/** A picture or film is kept for the clinic. */
	PICTURE_KEPT,
	/** A picture or something else came that the bot cannot read. */
	CANNOT_SEE,
	/** An idea for a day of less walking. */
	GENTLE_IDEA,
	/** The gist of a fortnight's walks. */
	FORTNIGHT_WALKS,
	/** No walk was told of in a fortnight. */
	FORTNIGHT_NO_WALKS,
	/** The gist of a fortnight's mornings. */
	FORTNIGHT_MORNINGS,
	/** How to get no more pictures; said with the first one. */
	FORTNIGHT_FIRST,
	/** No more pictures come by themselves. */
	FORTNIGHT_OFF,
	/** There is a guide to seeing signs. */
	LOOKING_OFFER,
	/** The signs that one can learn to see. */
	LOOKING_LIST,
	/** Something went wrong here. */
	APOLOGY,
	/** The words that a dog's signs are joined by. */
	SIGNS_NONE,
	/** How the household is spoken to. */
	SPEECH,
	/** The household is spoken to otherwise from now on. */
	SPEECH_CHANGED,
	/** There is no such language or unit. */
	SPEECH_NOT_UNDERSTOOD,
	/** Offers the language that the chat program is set to, in that language. */
	SPEECH_OFFER

}
