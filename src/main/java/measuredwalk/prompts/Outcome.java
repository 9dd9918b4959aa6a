package measuredwalk.prompts;

/** What came of a time to ask. */
public enum Outcome {

	/** It was asked, or there is nothing to ask any more. */
	SETTLED,
	/** Another question waits for its answer: try again a little later. */
	NOT_NOW

}
