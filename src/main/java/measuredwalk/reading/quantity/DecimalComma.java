package measuredwalk.reading.quantity;

import org.jspecify.annotations.Nullable;

/** Reads the decimal comma of '1,5 hours', which needs a unit behind it. */
final class DecimalComma {

	private DecimalComma() {
	}

	static @Nullable NumberPhrase at(Terms terms, int at) {
		boolean comma = terms.isFigures(at) && terms.is(at + 1, ",") && terms.glued(at + 1) && terms.glued(at + 2)
				&& terms.isFigures(at + 2) && terms.word(at + 2).length() == 1 && terms.unit(at + 3) != null;
		return comma ? new NumberPhrase(Figures.value(terms.word(at)) + Figures.value(terms.word(at + 2)) / 10, at + 3,
				NumberPhrase.Style.FIGURES, false) : null;
	}

}
