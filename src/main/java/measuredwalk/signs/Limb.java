package measuredwalk.signs;

/** A front or a back leg. */
public enum Limb implements Coded {

	FORE, HIND

}
