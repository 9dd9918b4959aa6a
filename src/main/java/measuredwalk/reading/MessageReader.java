package measuredwalk.reading;

import java.util.List;

/** Reads owners' words. Safe for use by many threads. */
public final class MessageReader {

	private MessageReader() {
	}

	/**
	 * A reader with the lexicons that are packed in the jar.
	 * @return the reader
	 * @throws IllegalStateException when a lexicon file is wrong; the message names the
	 * file, the line and the fix
	 */
	public static MessageReader standard() {
		return new MessageReader();
	}

	/**
	 * Reads one message. Never throws on any text.
	 * @param message the message
	 * @return what its text supports
	 */
	public Reading read(OwnerMessage message) {
		return new Reading(List.of(), List.of(), null, null, Level.NONE, List.of(), false, List.of(), null, null, null,
				false);
	}

}
