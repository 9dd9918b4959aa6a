package measuredwalk.reading;

import measuredwalk.reading.amount.Amounts;
import measuredwalk.reading.context.Annotation;
import measuredwalk.reading.lexicon.Category;
import measuredwalk.reading.lexicon.Mention;
import measuredwalk.reading.words.Words;
import measuredwalk.signs.Coded;
import measuredwalk.signs.Limb;
import measuredwalk.signs.Side;
import org.jspecify.annotations.Nullable;

/** Reads what a message changes of an earlier one: '15 not 50', 'sorry, meant left'. */
final class CorrectionReader {

	private final Annotation annotation;

	private final Words words;

	private @Nullable Side side;

	private @Nullable Limb limb;

	private boolean contrasted;

	private CorrectionReader(Annotation annotation) {
		this.annotation = annotation;
		this.words = annotation.words();
	}

	static @Nullable Correction read(Annotation annotation, Amounts amounts) {
		return new CorrectionReader(annotation).read(amounts);
	}

	private @Nullable Correction read(Amounts amounts) {
		this.annotation.mentions(Category.SIDE).forEach(this::place);
		this.annotation.mentions(Category.LIMB).forEach(this::place);
		WalkTold walk = (amounts.walks().size() == 1) ? amounts.walks().get(0) : null;
		Double minutes = (walk == null) ? null : walk.minutes();
		Double metres = (walk == null) ? null : walk.distanceMetres();
		boolean cued = isCued();
		if (amounts.wrongMinutes() != null && minutes != null) {
			return new Correction(minutes, amounts.wrongMinutes(), null, null, null);
		}
		if (!cued && !this.contrasted) {
			return null;
		}
		boolean told = minutes != null || metres != null || this.side != null || this.limb != null;
		return told ? new Correction(minutes, null, metres, this.side, this.limb) : null;
	}

	/** A cue such as 'sorry' or 'I meant' at the beginning of the message. */
	private boolean isCued() {
		for (Mention cue : this.annotation.mentions(Category.CORRECTION)) {
			if (cue.from() <= 2) {
				return true;
			}
		}
		return false;
	}

	private void place(Mention mention) {
		if (isDenied(mention)) {
			this.contrasted = true;
			return;
		}
		if (mention.category() == Category.SIDE && !mention.value().equals("both")) {
			this.side = Coded.of(Side.class, mention.value());
		}
		if (mention.category() == Category.LIMB) {
			this.limb = Coded.of(Limb.class, mention.value());
		}
	}

	/** The wrong one of 'front left, not the back left'. */
	private boolean isDenied(Mention mention) {
		for (int at = mention.from() - 1; at >= Math.max(0, mention.from() - 3); at--) {
			if (this.words.is(at, "not")) {
				return true;
			}
			if (this.words.isBreakBefore(at + 1)) {
				return false;
			}
		}
		return false;
	}

}
