package measuredwalk.suggestions;

import measuredwalk.journal.MorningFacts;
import measuredwalk.signs.Coded;
import measuredwalk.signs.Overall;
import measuredwalk.signs.Severity;
import measuredwalk.signs.Sign;

/** How a morning looks to people, on pages and pictures. */
public enum MorningLook implements Coded {

	/** No signs, and not worse than usual. */
	CLEAR,
	/** Some signs, but none that is clear. */
	SOME_SIGNS,
	/** Worse than usual, clear signs or long stiffness. */
	WORSE;

	/** Morning stiffness that takes this long counts as clear, as in the model. */
	private static final double CLEARLY_STIFF_MINUTES = 30;

	/**
	 * How a morning looks.
	 * @param facts what was told of it
	 * @return its look
	 */
	public static MorningLook of(MorningFacts facts) {
		boolean clearSign = facts.signs().stream().anyMatch(MorningLook::clear);
		boolean stiff = facts.stiffMinutes() != null && facts.stiffMinutes() >= CLEARLY_STIFF_MINUTES;
		if (facts.overall() == Overall.WORSE || clearSign || stiff) {
			return WORSE;
		}
		return facts.signs().stream().anyMatch(Sign::present) ? SOME_SIGNS : CLEAR;
	}

	private static boolean clear(Sign sign) {
		return sign.present() && sign.severity() != null && sign.severity() != Severity.MILD;
	}

}
