package measuredwalk.care;

import java.util.List;
import java.util.function.Predicate;

import measuredwalk.conversations.CheckIn;
import measuredwalk.conversations.CheckIns;
import measuredwalk.reading.Question;
import measuredwalk.reading.Reading;
import measuredwalk.signs.Moment;
import measuredwalk.signs.Overall;
import measuredwalk.signs.Sign;
import org.jspecify.annotations.Nullable;

/**
 * Which of a message's signs belong to a walk and which to a morning.
 *
 * @param walkSigns signs that belong to a walk
 * @param morningSigns signs that belong to a morning
 * @param walkOverall how the dog was after the walk, or null
 * @param morningOverall how the dog was that morning, or null
 */
record SignPlaces(List<Sign> walkSigns, List<Sign> morningSigns, @Nullable Overall walkOverall,
		@Nullable Overall morningOverall) {

	/**
	 * Sorts them by what was asked, by when they were seen and by whether a walk was
	 * told.
	 */
	static SignPlaces of(Reading reading, @Nullable CheckIn checkIn, boolean walkedToday) {
		boolean morningAsked = (checkIn != null) && checkIn.reads() == Question.MORNING;
		boolean walkTalk = !morningAsked && (walkAsked(checkIn) || !reading.walks().isEmpty() || walkedToday)
				&& reading.stiffMinutes() == null;
		Predicate<Sign> onWalk = walkTalk ? (sign) -> !nightOrMorning(sign)
				: (sign) -> SignsTold.onTheWalk(sign) && (walkedToday || !reading.walks().isEmpty());
		List<Sign> walkSigns = reading.signs().stream().filter(onWalk).toList();
		List<Sign> morningSigns = reading.signs().stream().filter(onWalk.negate()).toList();
		return new SignPlaces(walkSigns, morningSigns, walkTalk ? reading.overall() : null,
				walkTalk ? null : reading.overall());
	}

	private static boolean walkAsked(@Nullable CheckIn checkIn) {
		return checkIn != null && checkIn.conversation().equals(CheckIns.AFTER_WALK);
	}

	private static boolean nightOrMorning(Sign sign) {
		return sign.when() == Moment.NIGHT || sign.when() == Moment.MORNING;
	}

	boolean anythingOfWalk() {
		return !this.walkSigns.isEmpty() || this.walkOverall != null;
	}

	boolean anythingOfMorning() {
		return !this.morningSigns.isEmpty() || this.morningOverall != null;
	}

}
