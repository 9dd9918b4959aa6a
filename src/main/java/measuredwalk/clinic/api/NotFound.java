package measuredwalk.clinic.api;

/** Something that is asked for by a number that it does not have. */
class NotFound extends RuntimeException {

	NotFound(String kind, Object id) {
		super("There is no " + kind + " with the id " + id + ".");
	}

}
