package measuredwalk.conversations;

import java.util.EnumSet;
import java.util.List;
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
	 * @return the slots that are known now
	 */
	public static Set<Slot> reading(Reading reading, Set<Slot> asked) {
		Set<Slot> settled = EnumSet.noneOf(Slot.class);
		if (reading.noWalk() || reading.walks().stream().anyMatch(SettledBy::tellsAmount)) {
			settled.add(Slot.WALK_AMOUNT);
		}
		settled.addAll(bySigns(reading.signs()));
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
	 * What signs alone settle.
	 * @param signs signs seen and denied
	 * @return the slots that are known by them
	 */
	public static Set<Slot> bySigns(List<Sign> signs) {
		Set<Slot> settled = EnumSet.noneOf(Slot.class);
		for (Sign sign : signs) {
			settled.add(Slot.SIGNS);
			if (sign.kind() == SignKind.STIFFNESS) {
				settled.add(Slot.STIFFNESS);
			}
			if (sign.onsetMinute() != null || sign.when() != null) {
				settled.add(Slot.ONSET);
			}
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
