package measuredwalk.reading.level;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

import measuredwalk.signs.Overall;
import measuredwalk.signs.Sign;
import measuredwalk.signs.SignKind;
import org.jspecify.annotations.Nullable;

/**
 * What the rules read in a message that many a day of an old dog has: its usual signs, a
 * denial, a walk. The second net weighs it against the wording, so that a message whose
 * every word is understood is not raised for a likeness. Signs that are urgent by
 * themselves are left out: where a rule misses one, the net must not have leaned on it.
 *
 * @param names one for each finding, in rising order
 */
public record OrdinaryFindings(Set<String> names) {

	/**
	 * How much one finding counts beside a message's runs of words, which count 1 in all.
	 */
	static final double VALUE = 0.25;

	private static final Set<SignKind> USUAL = EnumSet.of(SignKind.LAMENESS, SignKind.STIFFNESS, SignKind.SLOWING,
			SignKind.HIND_LIMB_DRAGGING, SignKind.SITTING_OR_LYING_DOWN, SignKind.LOW_HEAD_CARRIAGE,
			SignKind.RELUCTANCE, SignKind.FATIGUE, SignKind.DIFFICULTY_RISING, SignKind.PANTING, SignKind.RESTLESSNESS,
			SignKind.PAIN, SignKind.VOCALISING, SignKind.JOINT_LICKING, SignKind.IRRITABILITY, SignKind.INAPPETENCE,
			SignKind.LETHARGY, SignKind.STUMBLING, SignKind.TREMBLING, SignKind.BUNNY_HOPPING, SignKind.MUSCLE_WASTING);

	/**
	 * The ordinary findings among what was read.
	 * @param signs the signs of the message
	 * @param overall how the dog was on the whole, or null
	 * @param walk whether an amount of walk was told
	 * @return the findings
	 */
	public static OrdinaryFindings of(List<Sign> signs, @Nullable Overall overall, boolean walk) {
		Set<String> names = new TreeSet<>();
		for (Sign sign : signs) {
			if (!sign.present()) {
				names.add("<denied>");
			}
			else if (USUAL.contains(sign.kind())) {
				names.add("<" + sign.kind().code() + ">");
			}
		}
		if (overall != null) {
			names.add("<" + overall.code() + ">");
		}
		if (walk) {
			names.add("<walk>");
		}
		return new OrdinaryFindings(names);
	}

}
