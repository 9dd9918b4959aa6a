package measuredwalk.signs;

/** How the dog was on the whole, against its own usual. */
public enum Overall implements Coded {

	BETTER, USUAL, WORSE

}
