package measuredwalk.household;

/** A change that cannot be made as asked; the message says what must be different. */
public class Refused extends IllegalArgumentException {

	Refused(String message) {
		super(message);
	}

	static void unless(boolean holds, String otherwise) {
		if (!holds) {
			throw new Refused(otherwise);
		}
	}

}
