package measuredwalk.escalation.course;

import java.util.EnumSet;
import java.util.Set;

import measuredwalk.signs.Severity;
import measuredwalk.signs.Sign;
import measuredwalk.signs.SignKind;

/** How bad a sign is. */
final class SignGrade {

	/** Signs of moving that joints and muscles give; common practice, no source. */
	private static final Set<SignKind> OF_MOVING = EnumSet.of(SignKind.LAMENESS, SignKind.STIFFNESS, SignKind.SLOWING,
			SignKind.SITTING_OR_LYING_DOWN, SignKind.LOW_HEAD_CARRIAGE, SignKind.HIND_LIMB_DRAGGING, SignKind.FATIGUE,
			SignKind.RELUCTANCE, SignKind.DIFFICULTY_RISING, SignKind.STUMBLING, SignKind.TREMBLING,
			SignKind.BUNNY_HOPPING, SignKind.PAIN, SignKind.VOCALISING, SignKind.JOINT_LICKING, SignKind.SWELLING,
			SignKind.NON_WEIGHT_BEARING, SignKind.RECUMBENCY);

	private static final Set<SignKind> NEVER_MILD = EnumSet.of(SignKind.NON_WEIGHT_BEARING, SignKind.RECUMBENCY);

	private SignGrade() {
	}

	static boolean ofMoving(Sign sign) {
		return OF_MOVING.contains(sign.kind());
	}

	/** 1 mild, 2 clear, 3 severe; what was not said counts as mild. */
	static int of(Sign sign) {
		if (NEVER_MILD.contains(sign.kind())) {
			return 3;
		}
		return (sign.severity() == null) ? 1 : sign.severity().ordinal() - Severity.MILD.ordinal() + 1;
	}

}
