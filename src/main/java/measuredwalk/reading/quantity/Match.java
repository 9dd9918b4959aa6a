package measuredwalk.reading.quantity;

import java.util.List;

/**
 * A quantity that was found.
 *
 * @param quantity in its likeliest reading
 * @param others other readings of the same words
 * @param end index behind its last token
 */
record Match(Quantity quantity, List<Quantity> others, int end) {

	static Match of(Quantity quantity) {
		return new Match(quantity, List.of(), quantity.span().lastToken() + 1);
	}

	static Match of(Quantity quantity, Quantity other) {
		return new Match(quantity, List.of(other), quantity.span().lastToken() + 1);
	}

}
