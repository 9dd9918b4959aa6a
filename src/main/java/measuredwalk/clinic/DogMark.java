package measuredwalk.clinic;

import java.nio.charset.StandardCharsets;
import java.util.UUID;

import measuredwalk.household.Dog;

/** A mark that changes whenever a dog's plan, medicines or data do. */
public final class DogMark {

	private DogMark() {
	}

	/**
	 * The mark of a dog as it is.
	 * @param dog the dog
	 * @return letters, digits and dashes
	 */
	public static String of(Dog dog) {
		return UUID.nameUUIDFromBytes(dog.toString().getBytes(StandardCharsets.UTF_8)).toString();
	}

}
