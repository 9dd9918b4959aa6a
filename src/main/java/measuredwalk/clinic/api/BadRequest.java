package measuredwalk.clinic.api;

/** A request that cannot be met as it is; the message says what must be different. */
class BadRequest extends RuntimeException {

	BadRequest(String message) {
		super(message);
	}

}
