package measuredwalk.household;

import java.security.SecureRandom;

/**
 * Codes that people copy by hand and nobody can guess: ten signs out of 31 that are not
 * taken for one another, about 49 bits.
 */
public final class SecretCode {

	private static final String SIGNS = "ABCDEFGHJKMNPQRSTUVWXYZ23456789";

	private static final int LENGTH = 10;

	private static final SecureRandom RANDOM = new SecureRandom();

	private SecretCode() {
	}

	/**
	 * A new code.
	 * @return ten capital letters and digits
	 */
	public static String make() {
		StringBuilder code = new StringBuilder(LENGTH);
		for (int i = 0; i < LENGTH; i++) {
			code.append(SIGNS.charAt(RANDOM.nextInt(SIGNS.length())));
		}
		return code.toString();
	}

	/**
	 * A code as it is stored, however a person typed it.
	 * @param typed what was typed
	 * @return capital letters and digits only
	 */
	public static String tidy(String typed) {
		return typed.toUpperCase(java.util.Locale.ROOT).replaceAll("[^A-Z0-9]", "");
	}

}
