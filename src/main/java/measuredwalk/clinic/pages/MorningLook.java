package measuredwalk.clinic.pages;

import measuredwalk.journal.MorningFacts;
import measuredwalk.pictures.PictureDay;
import measuredwalk.signs.Overall;
import measuredwalk.signs.Severity;
import measuredwalk.signs.Sign;

/** How a morning looks on the picture of a course. */
enum MorningLook {

	CLEAR("clear", PictureDay.Morning.CLEAR), SOME_SIGNS("some signs", PictureDay.Morning.SOME_SIGNS),
	WORSE("worse", PictureDay.Morning.WORSE);

	/** Morning stiffness that takes this long counts as clear, as in the model. */
	private static final double CLEARLY_STIFF_MINUTES = 30;

	private final String words;

	private final PictureDay.Morning onPicture;

	MorningLook(String words, PictureDay.Morning onPicture) {
		this.words = words;
		this.onPicture = onPicture;
	}

	PictureDay.Morning onPicture() {
		return this.onPicture;
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
