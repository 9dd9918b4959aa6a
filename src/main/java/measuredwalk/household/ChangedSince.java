package measuredwalk.household;

/** Somebody else has changed the dog since it was looked at. */
public class ChangedSince extends RuntimeException {

	ChangedSince() {
		super("Somebody else has changed this dog since you looked at it. Look again, then change it.");
	}

}
