package measuredwalk.signs;

/**
 * The side of the dog, seen from its own head: the near side is left, the off side right.
 */
public enum Side implements Coded {

	LEFT, RIGHT

}
