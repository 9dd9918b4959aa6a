package measuredwalk.reading.observation;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;

import measuredwalk.reading.context.Annotation;
import measuredwalk.reading.lexicon.Category;
import measuredwalk.reading.lexicon.Mention;
import measuredwalk.reading.lexicon.WordClass;
import measuredwalk.reading.words.Words;
import measuredwalk.signs.Coded;
import measuredwalk.signs.Limb;
import measuredwalk.signs.Side;
import measuredwalk.signs.Sign;
import measuredwalk.signs.SignKind;

/** Gives signs their side and their leg. */
final class Places {

	private static final Set<SignKind> PLACED = EnumSet.of(SignKind.LAMENESS, SignKind.STIFFNESS,
			SignKind.HIND_LIMB_DRAGGING, SignKind.TREMBLING, SignKind.PAIN, SignKind.JOINT_LICKING, SignKind.SWELLING,
			SignKind.ATAXIA, SignKind.BUNNY_HOPPING, SignKind.MUSCLE_WASTING, SignKind.PAW_INJURY,
			SignKind.NON_WEIGHT_BEARING, SignKind.PARESIS, SignKind.KNUCKLING, SignKind.STUMBLING, SignKind.BLEEDING,
			SignKind.VOCALISING, SignKind.DIFFICULTY_RISING);

	/** How far before a place the word stands that puts it right, in words. */
	private static final int CORRECTED_WITHIN = 3;

	private final Annotation annotation;

	private final Words words;

	private final Nearness nearness;

	Places(Annotation annotation, Nearness nearness) {
		this.annotation = annotation;
		this.words = annotation.words();
		this.nearness = nearness;
	}

	void give(List<Observation> observations, Mention mention) {
		if (isDenied(mention) || isDirection(mention)) {
			return;
		}
		int best = nearest(observations, mention);
		if (best < 0) {
			return;
		}
		Sign sign = observations.get(best).sign();
		Side side = sign.side();
		Limb limb = sign.limb();
		boolean corrected = isCorrected(mention);
		if (mention.category() == Category.SIDE && (side == null || corrected) && !mention.value().equals("both")) {
			side = Coded.of(Side.class, mention.value());
		}
		if (mention.category() == Category.LIMB && (limb == null || corrected)) {
			limb = Coded.of(Limb.class, mention.value());
		}
		observations.set(best, observations.get(best)
			.with(new Sign(sign.kind(), sign.present(), sign.severity(), side, limb, sign.when(), sign.onsetMinute())));
	}

	/** 'sore on the front right and it was swollen': the place is that of 'it'. */
	void carry(List<Observation> observations) {
		for (int index = 1; index < observations.size(); index++) {
			Sign sign = observations.get(index).sign();
			Sign before = observations.get(index - 1).sign();
			if (isUnplaced(sign) && before.present() && isOfIt(observations.get(index).mention())) {
				observations.set(index,
						observations.get(index)
							.with(new Sign(sign.kind(), true, sign.severity(), before.side(), before.limb(),
									sign.when(), sign.onsetMinute())));
			}
		}
	}

	private static boolean isUnplaced(Sign sign) {
		return sign.present() && PLACED.contains(sign.kind()) && sign.side() == null && sign.limb() == null;
	}

	private boolean isOfIt(Mention mention) {
		return this.words.is(mention.to() - 1, "it") || this.words.is(mention.to(), "it")
				|| this.words.is(mention.from() - 1, "it")
				|| (this.words.is(mention.from() - 2, "it") && this.annotation.clauses()
					.of(mention.from() - 2) == this.annotation.clauses().of(mention.from()));
	}

	private int nearest(List<Observation> observations, Mention mention) {
		int best = -1;
		int nearest = Integer.MAX_VALUE;
		for (int index = 0; index < observations.size(); index++) {
			Sign sign = observations.get(index).sign();
			boolean told = sign.present() || isInClause(observations.get(index).mention(), mention);
			if (told && PLACED.contains(sign.kind())) {
				int distance = this.nearness.distance(observations.get(index).mention(), mention);
				if (distance < nearest) {
					best = index;
					nearest = distance;
				}
			}
		}
		return best;
	}

	/** A denied sign has a place only in its own clause: 'no limp on the back right'. */
	private boolean isInClause(Mention sign, Mention place) {
		return this.annotation.clauses().of(sign.from()) == this.annotation.clauses().of(place.from());
	}

	private boolean isDenied(Mention mention) {
		return this.words.is(mention.from() - 1, "not")
				|| (this.words.is(mention.from() - 1, "the") && this.words.is(mention.from() - 2, "not"));
	}

	/** 'the left, no, I mean right': what comes last counts. */
	private boolean isCorrected(Mention mention) {
		for (int at = mention.from() - 1; at >= mention.from() - CORRECTED_WITHIN; at--) {
			if (this.annotation.is(at, WordClass.CORRECTING)) {
				return true;
			}
		}
		return false;
	}

	/**
	 * 'came back', 'the limp is back', 'the back of the car', 'coming right': no place.
	 */
	private boolean isDirection(Mention mention) {
		int before = mention.from() - 1;
		if (mention.length() == 1 && this.words.is(mention.from(), "right")) {
			return this.annotation.is(before, WordClass.RIGHTED) || isDegree(mention);
		}
		if (mention.length() > 1 || !this.words.is(mention.from(), "back")) {
			return false;
		}
		boolean counted = before >= 0 && this.words.isBreakBefore(mention.to())
				&& Character.isDigit(this.words.form(before).charAt(0));
		counted |= mention.to() < this.words.size() && !this.words.isBreakBefore(mention.to())
				&& Character.isDigit(this.words.form(mention.to()).charAt(0));
		boolean onward = this.annotation.is(mention.to(), WordClass.ONWARD) && !this.words.isBreakBefore(mention.to());
		boolean returned = this.words.is(before, "is")
				&& (this.words.isBreakBefore(mention.to()) || this.words.is(mention.to(), "again"));
		return counted || returned || this.annotation.is(before, WordClass.MOVING)
				|| (onward && !this.annotation.is(before, WordClass.SIDED_BEFORE));
	}

	/** 'she were right stiff' is how stiff; 'back right lame' is where. */
	private boolean isDegree(Mention right) {
		return this.annotation.mentions(Category.SEVERITY).stream().anyMatch((grade) -> grade.from() == right.from())
				&& this.annotation.mentions(Category.LIMB).stream().noneMatch((limb) -> limb.to() == right.from());
	}

}
