package measuredwalk.reading.lexicon;

/** A line of a lexicon file that cannot be used. */
public final class LexiconError extends IllegalStateException {

	LexiconError(String file, int line, String what, String fix) {
		super(file + " line " + line + ": " + what + ". " + fix);
	}

}
