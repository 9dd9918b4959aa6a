package measuredwalk.clinic.pages;

/** A page was asked for that is about nothing that exists. */
class NoSuchThing extends RuntimeException {

	NoSuchThing(String kind) {
		super("There is no such " + kind + ". It may have been erased.");
	}

}
