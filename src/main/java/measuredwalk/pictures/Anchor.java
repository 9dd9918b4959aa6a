package measuredwalk.pictures;

/** Which end of a line of words stands at its place. */
enum Anchor {

	START, MIDDLE, END

}
