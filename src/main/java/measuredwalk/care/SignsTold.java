package measuredwalk.care;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

import measuredwalk.signs.Limb;
import measuredwalk.signs.Moment;
import measuredwalk.signs.Side;
import measuredwalk.signs.Sign;
import measuredwalk.signs.SignKind;
import org.jspecify.annotations.Nullable;

/** How signs of several messages about the same walk or morning come together. */
final class SignsTold {

	private static final Set<Moment> ON_THE_WALK = Set.of(Moment.START, Moment.MIDDLE, Moment.END);

	private SignsTold() {
	}

	/**
	 * The newer word on a sign counts; what it leaves open stays as it was said before.
	 */
	static List<Sign> together(List<Sign> before, List<Sign> newer) {
		Map<SignKind, Sign> byKind = new LinkedHashMap<>();
		List<Sign> all = new ArrayList<>(before);
		all.addAll(newer);
		all.forEach((sign) -> byKind.merge(sign.kind(), sign, SignsTold::together));
		return List.copyOf(byKind.values());
	}

	private static Sign together(Sign before, Sign newer) {
		if (before.present() != newer.present()) {
			return newer;
		}
		return new Sign(newer.kind(), newer.present(), either(newer.severity(), before.severity()),
				either(newer.side(), before.side()), either(newer.limb(), before.limb()),
				either(newer.when(), before.when()), either(newer.onsetMinute(), before.onsetMinute()));
	}

	private static <T> @Nullable T either(@Nullable T first, @Nullable T second) {
		return (first != null) ? first : second;
	}

	static boolean anyBeganUnknown(List<Sign> signs) {
		return signs.stream().anyMatch(SignsTold::beganUnknown);
	}

	/** A sign that was seen on the walk, and nobody said when in the walk. */
	static boolean beganUnknown(Sign sign) {
		return sign.present() && sign.onsetMinute() == null && sign.when() == null;
	}

	static boolean onTheWalk(Sign sign) {
		return sign.onsetMinute() != null || (sign.when() != null && ON_THE_WALK.contains(sign.when()));
	}

	/**
	 * Puts right the leg that a correction names, on each sign that was told of a leg.
	 */
	static List<Sign> withLeg(List<Sign> signs, @Nullable Side side, @Nullable Limb limb) {
		boolean anyWithLeg = signs.stream().anyMatch(SignsTold::hasLeg);
		return signs.stream()
			.map((sign) -> (sign.present() && (hasLeg(sign) || !anyWithLeg)) ? withLeg(sign, side, limb) : sign)
			.collect(Collectors.toList());
	}

	private static boolean hasLeg(Sign sign) {
		return sign.side() != null || sign.limb() != null;
	}

	private static Sign withLeg(Sign sign, @Nullable Side side, @Nullable Limb limb) {
		return new Sign(sign.kind(), true, sign.severity(), either(side, sign.side()), either(limb, sign.limb()),
				sign.when(), sign.onsetMinute());
	}

	/** The same signs, those whose beginning nobody knew begun as another sign did. */
	static List<Sign> begun(List<Sign> signs, @Nullable Double onsetMinute, @Nullable Moment when) {
		return signs.stream().map((sign) -> beganUnknown(sign) ? begun(sign, onsetMinute, when) : sign).toList();
	}

	private static Sign begun(Sign sign, @Nullable Double onsetMinute, @Nullable Moment when) {
		return new Sign(sign.kind(), true, sign.severity(), sign.side(), sign.limb(), when, onsetMinute);
	}

}
