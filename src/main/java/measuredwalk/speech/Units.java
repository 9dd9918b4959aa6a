package measuredwalk.speech;

import java.util.Arrays;
import java.util.Optional;

/** In what distances are told. */
public enum Units {

	/** Kilometres and metres. */
	KILOMETRES("km"),
	/** Miles and yards. */
	MILES("miles");

	private final String code;

	Units(String code) {
		this.code = code;
	}

	/**
	 * The spelling in files, the database and the API.
	 * @return a short word
	 */
	public String code() {
		return this.code;
	}

	/**
	 * The units of a spelling.
	 * @param code the spelling
	 * @return the units, or empty when it is none
	 */
	public static Optional<Units> of(String code) {
		return Arrays.stream(values()).filter((units) -> units.code.equals(code)).findFirst();
	}

}
