package measuredwalk.telegram;

/** What goes wrong with one request to the stand-in. */
enum Fault {

	/** 429 with a time to wait of one second; nothing is done. */
	FLOOD,
	/** 403; nothing is done. */
	FORBIDDEN,
	/** 500; nothing is done. */
	SERVER_ERROR,
	/** An answer from something in between, which is no JSON; nothing is done. */
	BAD_GATEWAY,
	/** The connection ends before anything is done. */
	DROPPED,
	/** It is done, but the connection ends before the answer. */
	LOST_ANSWER

}
