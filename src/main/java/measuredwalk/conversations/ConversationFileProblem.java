package measuredwalk.conversations;

/** A conversation file is missing or wrong; the message names file, line and fix. */
public class ConversationFileProblem extends RuntimeException {

	ConversationFileProblem(String file, int line, String problem) {
		super(file + ", line " + line + ": " + problem);
	}

	ConversationFileProblem(String message) {
		super(message);
	}

}
