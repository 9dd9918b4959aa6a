package measuredwalk.signs;

/** How bad a sign was, by the words of the one who saw it. */
public enum Severity implements Coded {

	MILD, MODERATE, SEVERE

}
