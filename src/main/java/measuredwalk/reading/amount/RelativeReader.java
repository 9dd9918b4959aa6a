package measuredwalk.reading.amount;

import java.util.Map;

import measuredwalk.reading.Question;
import measuredwalk.reading.RelativeAmount;
import measuredwalk.reading.context.Annotation;
import measuredwalk.reading.lexicon.Category;
import measuredwalk.reading.lexicon.Mention;
import measuredwalk.reading.words.Words;
import measuredwalk.signs.Coded;
import org.jspecify.annotations.Nullable;

/** Reads how long a walk was against another: 'half the usual', 'same as yesterday'. */
final class RelativeReader {

	private static final Map<String, Double> FACTORS = Map.ofEntries(Map.entry("half", 0.5), Map.entry("third", 0.33),
			Map.entry("quarter", 0.25), Map.entry("quarters", 0.75), Map.entry("thirds", 0.67), Map.entry("twice", 2.0),
			Map.entry("double", 2.0), Map.entry("same", 1.0), Map.entry("treble", 3.0), Map.entry("triple", 3.0));

	private final Annotation annotation;

	private final Words words;

	private final @Nullable Double offset;

	RelativeReader(Annotation annotation, @Nullable Double offset) {
		this.annotation = annotation;
		this.words = annotation.words();
		this.offset = offset;
	}

	@Nullable RelativeAmount read(Question question) {
		if (question == Question.MORNING) {
			return null;
		}
		RelativeAmount.Base base = null;
		Double factor = null;
		for (Mention mention : this.annotation.mentions(Category.RELATIVE)) {
			Double told = factor(mention);
			if (told != null || !mention.entry().has("weak")) {
				base = (base == null || mention.value().equals("previous"))
						? Coded.of(RelativeAmount.Base.class, mention.value()) : base;
				factor = (factor == null) ? (told == null ? Double.valueOf(1) : told) : factor;
			}
			else if (this.offset != null) {
				base = Coded.of(RelativeAmount.Base.class, mention.value());
			}
		}
		if (this.offset != null) {
			return new RelativeAmount((base == null) ? RelativeAmount.Base.USUAL : base, null, this.offset);
		}
		return (base == null) ? null : new RelativeAmount(base, factor, null);
	}

	private @Nullable Double factor(Mention mention) {
		String told = mention.entry().flag("factor");
		return (told == null) ? factorNear(mention) : Double.valueOf(told);
	}

	private @Nullable Double factorNear(Mention mention) {
		for (int at = mention.from(); at >= Math.max(0, mention.from() - 5); at--) {
			Double factor = FACTORS.get(this.words.form(at));
			if (factor != null && !isOfSign(at)) {
				if (factor == 0.5 && this.words.is(at + 1, "times")) {
					return this.words.is(at - 3, "two") || this.words.is(at - 3, "2") ? 2.5 : 1.5;
				}
				Double other = (factor == 1) ? doubleTime(mention) : null;
				return (other == null) ? factor : other;
			}
			if (this.words.isBreakBefore(at)) {
				break;
			}
		}
		for (int at = mention.to(); at < Math.min(this.words.size(), mention.to() + 3)
				&& !this.words.isBreakBefore(at); at++) {
			if (this.words.is(at, "twice")) {
				return 2.0;
			}
		}
		return doubleTime(mention);
	}

	/** 'Sick twice this morning' tells how often, not how long. */
	private boolean isOfSign(int at) {
		Mention before = (at > 0 && this.words.is(at, "twice")) ? this.annotation.coverOf(at - 1) : null;
		return before != null && before.category() == Category.SIGN;
	}

	private @Nullable Double doubleTime(Mention mention) {
		for (int at = mention.to(); at < Math.min(this.words.size(), mention.to() + 4); at++) {
			if (this.words.is(at, "double") || this.words.is(at, "twice")) {
				return 2.0;
			}
			if (this.words.is(at, "half")) {
				return 0.5;
			}
		}
		return null;
	}

}
