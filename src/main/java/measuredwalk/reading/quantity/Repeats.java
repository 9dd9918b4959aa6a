package measuredwalk.reading.quantity;

import measuredwalk.reading.quantity.Amounts.Found;
import org.jspecify.annotations.Nullable;

/**
 * Reads how often: '2 x 10 min', 'two lots of ten', '10 mins twice', 'two 20 min walks'.
 */
final class Repeats {

	private static final int MOST = 12;

	private Repeats() {
	}

	/** The amount that the number is a count of, or null. */
	static @Nullable Found before(Terms terms, Measured count) {
		boolean small = !count.hasUnit() || isLump(terms, count)
				|| (count.unit() != null && count.unit().is(Dimension.TIMES));
		double number = count.number().value();
		if (!small || !count.number().isWhole() || number < 2 || number > MOST) {
			return null;
		}
		int at = amountStart(terms, count);
		Measured each = at < 0 ? walksOf(terms, count) : Measures.at(terms, at);
		if (each == null || isRate(each)) {
			return null;
		}
		Found range = Ranges.open(terms, each);
		Found found = range == null ? Amounts.single(each) : range;
		return found.repeated((int) number, found.end());
	}

	private static boolean isOfWalk(Unit unit) {
		return unit.is(Dimension.TIME) || unit.is(Dimension.LENGTH);
	}

	/** The 'a day' of '2 x a day' is no amount. */
	private static boolean isRate(Measured each) {
		return each.number().isArticle() && each.value() >= 86_400;
	}

	private static boolean isLump(Terms terms, Measured count) {
		return count.unit() != null && terms.is(count.end(), "of") && terms.cue(count.end() - 1, Cue.LUMP);
	}

	/** Index behind 'x', 'lots of' and the like, or -1. */
	private static int amountStart(Terms terms, Measured count) {
		int at = count.end();
		if (terms.cue(at, Cue.TIMES) || (terms.is(at, "times") && terms.numeral(at + 1) != Numeral.NONE)) {
			return at + 1;
		}
		if (terms.is(at - 1, "times") && terms.numeral(at).isCardinal()) {
			return at;
		}
		int lump = Numbers.fillersEnd(terms, at);
		int of = terms.is(lump, "of") ? lump : lump + 1;
		if (!terms.is(of, "of") || !terms.cue(of - 1, Cue.LUMP)) {
			return -1;
		}
		Bounds.Found about = Bounds.before(terms, of + 1);
		return about == null ? of + 1 : about.end();
	}

	/** 'two twenty minute walks', 'two half hour walks'. */
	private static @Nullable Measured walksOf(Terms terms, Measured count) {
		if (count.hasUnit() || count.number().end() != count.end()) {
			return null;
		}
		int at = Numbers.fillersEnd(terms, count.end());
		NumberPhrase plural = pluralAt(terms, at);
		if (plural != null && count.value() <= 4) {
			return new Measured(plural.value(), plural, null, plural.end(), Bound.NONE);
		}
		Measured each = Measures.at(terms, at);
		if (each == null || each.number().isArticle() || each.unit() == null) {
			return null;
		}
		return isOfWalk(each.unit()) && (count.value() <= 4 || terms.cue(each.end(), Cue.WALK)) ? each : null;
	}

	/** The 'twenties' of 'two 20s' and "two 20's". */
	private static @Nullable NumberPhrase pluralAt(Terms terms, int at) {
		NumberPhrase number = terms.isFigures(at) ? Figures.at(terms, at) : null;
		int letter = terms.is(at + 1, "'") ? at + 2 : at + 1;
		boolean plural = number != null && number.end() == at + 1 && terms.is(letter, "s") && terms.glued(letter);
		return plural ? new NumberPhrase(number.value(), letter + 1, number.style(), false) : null;
	}

	/** The amount with the count behind it: '10 mins twice', '15 min x 2'. */
	static Found after(Terms terms, Found found) {
		int at = found.end();
		if (found.times() > 1 || found.unit() == null || !isOfWalk(found.unit())) {
			return found;
		}
		if (terms.is(at, "twice")) {
			return found.repeated(2, at + 1);
		}
		NumberPhrase count = terms.cue(at, Cue.TIMES) ? Numbers.simpleAt(terms, at + 1) : null;
		boolean fits = count != null && count.isWhole() && count.value() >= 2 && count.value() <= MOST
				&& (terms.unit(count.end()) == null || terms.cue(count.end(), Cue.WALK));
		return fits && count != null ? found.repeated((int) count.value(), count.end()) : found;
	}

}
