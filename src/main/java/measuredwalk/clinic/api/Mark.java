package measuredwalk.clinic.api;

import java.util.Arrays;

import measuredwalk.clinic.DogMark;
import measuredwalk.household.Dog;
import org.jspecify.annotations.Nullable;

/** ETags of dogs (RFC 9110, sections 8.8.3 and 13.1.1). */
final class Mark {

	private Mark() {
	}

	static String of(Dog dog) {
		return "\"" + DogMark.of(dog) + "\"";
	}

	/** Whether a caller's If-Match fits; without one everything does. */
	static boolean matches(@Nullable String ifMatch, Dog dog) {
		return ifMatch == null || Arrays.stream(ifMatch.split(","))
			.map(String::strip)
			.anyMatch((each) -> each.equals("*") || each.equals(of(dog)));
	}

}
