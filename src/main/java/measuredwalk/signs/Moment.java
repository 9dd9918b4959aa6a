package measuredwalk.signs;

/** When a sign was seen: in one of three parts of the walk, or at a time after it. */
public enum Moment implements Coded {

	START, MIDDLE, END, AFTER, EVENING, NIGHT, MORNING

}
