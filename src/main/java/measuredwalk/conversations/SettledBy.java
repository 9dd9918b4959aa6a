package measuredwalk.conversations;

import java.util.EnumSet;
import java.util.Set;

import measuredwalk.reading.Answer;
import measuredwalk.reading.Reading;
import measuredwalk.reading.WalkTold;
import measuredwalk.signs.Overall;
import measuredwalk.signs.Sign;
import measuredwalk.signs.SignKind;

/** What a message settles: any answer may settle any slot. */
public final class SettledBy {

	private SettledBy() {
	}

	/**
	 * What a reading settles.
	 * @param reading what was read
	 * @param asked what the question that waits would settle; a bare no answers it
	 * @param aboutWalk true when the talk is of a walk, false when it is of a morning
	 * @return the slots that are known now
	 */
	public static Set<Slot> reading(Reading reading, Set<Slot> asked, boolean aboutWalk) {
		Set<Slot> settled = EnumSet.noneOf(Slot.class);
		if (reading.noWalk() || reading.walks().stream().anyMatch(SettledBy::tellsAmount)) {
			settled.add(Slot.WALK_AMOUNT);
		}
		reading.signs().forEach((sign) -> settled.addAll(bySign(sign, aboutWalk)));
		if (reading.overall() != null) {
			settled.addAll(byOverall(reading.overall()));
		}
		if (reading.stiffMinutes() != null) {
			settled.addAll(Set.of(Slot.STIFFNESS, Slot.STIFF_MINUTES));
		}
		if (reading.answer() == Answer.NO) {
			settled.addAll(asked);
		}
		return settled;
	}

	/**
	 * Stiffness in the morning is one question; whether there was anything else is
	 * another.
	 */
	private static Set<Slot> bySign(Sign sign, boolean aboutWalk) {
		Set<Slot> settled = EnumSet.noneOf(Slot.class);
		if (sign.kind() == SignKind.STIFFNESS) {
			settled.add(Slot.STIFFNESS);
		}
		if (aboutWalk || sign.kind() != SignKind.STIFFNESS) {
			settled.add(Slot.SIGNS);
		}
		if (sign.onsetMinute() != null || sign.when() != null) {
			settled.add(Slot.ONSET);
		}
		return settled;
	}

	/** 'Fine' says that there was nothing to see; 'worse' asks for more. */
	private static Set<Slot> byOverall(Overall overall) {
		return (overall == Overall.WORSE) ? Set.of(Slot.OVERALL) : Set.of(Slot.OVERALL, Slot.SIGNS, Slot.STIFFNESS);
	}

	private static boolean tellsAmount(WalkTold walk) {
		return walk.minutes() != null || walk.distanceMetres() != null || walk.relative() != null;
	}

}
