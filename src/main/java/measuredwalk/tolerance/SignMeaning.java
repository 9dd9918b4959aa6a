package measuredwalk.tolerance;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;

import measuredwalk.signs.Severity;
import measuredwalk.signs.Sign;
import measuredwalk.signs.SignKind;

/** What kinds of signs mean for the dose. The clinic's levels of a message are wider. */
final class SignMeaning {

	/** Signs that the joints or muscles had too much. */
	private static final Set<SignKind> LOCOMOTOR = EnumSet.of(SignKind.LAMENESS, SignKind.STIFFNESS, SignKind.SLOWING,
			SignKind.SITTING_OR_LYING_DOWN, SignKind.LOW_HEAD_CARRIAGE, SignKind.HIND_LIMB_DRAGGING, SignKind.PANTING,
			SignKind.FATIGUE, SignKind.RELUCTANCE, SignKind.DIFFICULTY_RISING, SignKind.STUMBLING, SignKind.TREMBLING,
			SignKind.BUNNY_HOPPING, SignKind.PAIN, SignKind.VOCALISING, SignKind.JOINT_LICKING, SignKind.SWELLING,
			SignKind.NON_WEIGHT_BEARING, SignKind.RECUMBENCY, SignKind.COLLAPSE, SignKind.OTHER);

	/** Signs that do not wait, from the emergency lists in the clinical rules. */
	private static final Set<SignKind> EMERGENCY = EnumSet.of(SignKind.NON_WEIGHT_BEARING, SignKind.RECUMBENCY,
			SignKind.COLLAPSE, SignKind.PARESIS, SignKind.KNUCKLING, SignKind.SEIZURE, SignKind.DYSPNOEA,
			SignKind.PALE_GUMS, SignKind.HEAT_ILLNESS, SignKind.TOXIN_INGESTION, SignKind.UNPRODUCTIVE_RETCHING,
			SignKind.ABDOMINAL_DISTENSION, SignKind.UNABLE_TO_URINATE);

	private static final Set<SignKind> SAME_DAY = EnumSet.of(SignKind.MELAENA, SignKind.JAUNDICE, SignKind.ATAXIA);

	/** Signs that are no reason to call unless the dog gets such a medicine. */
	private static final Set<SignKind> SAME_DAY_ON_MEDICINE = EnumSet.of(SignKind.INAPPETENCE, SignKind.VOMITING,
			SignKind.DIARRHOEA, SignKind.LETHARGY, SignKind.POLYDIPSIA, SignKind.INCONTINENCE);

	private SignMeaning() {
	}

	static boolean countsForTolerance(Sign sign) {
		return sign.present() && LOCOMOTOR.contains(sign.kind());
	}

	/** Of a walk or a morning: the signs that count, in order. */
	static List<Sign> counting(List<Sign> signs) {
		if (signs.isEmpty()) {
			return List.of();
		}
		return signs.stream().filter(SignMeaning::countsForTolerance).toList();
	}

	static boolean isEmergency(Sign sign) {
		return sign.present() && EMERGENCY.contains(sign.kind());
	}

	static boolean isSameDay(Sign sign, boolean onMedicine) {
		return sign.present()
				&& (SAME_DAY.contains(sign.kind()) || (onMedicine && SAME_DAY_ON_MEDICINE.contains(sign.kind())));
	}

	/**
	 * How bad a sign is.
	 * @param sign a sign that was seen
	 * @return 1 mild, 2 clear, 3 severe; not said counts as mild, but for signs that are
	 * never mild
	 */
	static int grade(Sign sign) {
		if (EMERGENCY.contains(sign.kind())) {
			return 3;
		}
		Severity severity = (sign.severity() != null) ? sign.severity() : Severity.MILD;
		return switch (severity) {
			case MILD -> 1;
			case MODERATE -> 2;
			case SEVERE -> 3;
		};
	}

}
