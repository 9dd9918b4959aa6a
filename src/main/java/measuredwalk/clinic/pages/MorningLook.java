package measuredwalk.clinic.pages;

import measuredwalk.journal.MorningFacts;
import measuredwalk.signs.Overall;
import measuredwalk.signs.Severity;
import measuredwalk.signs.Sign;

/** How a morning looks on the picture of a course. */
enum MorningLook {

	CLEAR("clear"), SOME_SIGNS("some signs"), WORSE("worse");

	/** Morning stiffness that takes this long counts as clear, as in the model. */
	private static final double CLEARLY_STIFF_MINUTES = 30;

	private final String words;

	MorningLook(String words) {
		this.words = words;
	}

	String words() {
		return this.words;
	}

	static MorningLook of(MorningFacts facts) {
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
