package measuredwalk.reading.quantity;

/**
 * Adds minutes told without their unit: '1 hour thirty', '1h05', 'an hour and twenty'.
 */
final class BareMinutes {

	private static final double MINUTE = 60;

	private static final double HOUR = 3600;

	private BareMinutes() {
	}

	static Measured extended(Terms terms, Measured measured, double smallest) {
		boolean hours = smallest == HOUR && measured.unit() != null && measured.unit().is(Dimension.TIME);
		boolean minutes = smallest == MINUTE && measured.unit() != null && measured.unit().is(Dimension.TIME)
				&& terms.glued(measured.end());
		if (!hours && !minutes) {
			return measured;
		}
		boolean and = terms.cue(measured.end(), Cue.AND);
		int at = measured.end() + (and ? 1 : 0);
		NumberPhrase number = WordNumbers.at(terms, at);
		boolean fits = number != null && number.isWhole() && number.style() != NumberPhrase.Style.FRACTION
				&& number.value() < 60 && isLikely(terms, at, number) && standsAlone(terms, number.end());
		return fits && number != null ? measured.plus(number.value() * smallest / 60, number.end()) : measured;
	}

	/** One figure alone ('1 hour 2 dogs') is likelier something else. */
	private static boolean isLikely(Terms terms, int at, NumberPhrase number) {
		return number.value() >= 10 || number.value() == 5 || terms.word(at).startsWith("0") || terms.glued(at);
	}

	private static boolean standsAlone(Terms terms, int end) {
		return terms.unit(end) == null && !terms.cue(end, Cue.RANGE) && !terms.cue(end, Cue.TIMES)
				&& !terms.numeral(end).isCardinal() && !terms.is(end, "%");
	}

}
