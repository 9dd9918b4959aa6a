package measuredwalk.reading.quantity;

import java.util.List;

import org.jspecify.annotations.Nullable;

/**
 * A quantity that was found.
 *
 * @param quantity in its likeliest reading
 * @param others other readings of the same words
 * @param unit the unit that it was told in, or null
 * @param end index behind its last token
 */
record Match(Quantity quantity, List<Quantity> others, @Nullable Unit unit, int end) {

	static Match of(Quantity quantity) {
		return new Match(quantity, List.of(), null, quantity.span().lastToken() + 1);
	}

	Match in(@Nullable Unit newUnit) {
		return new Match(this.quantity, this.others, newUnit, this.end);
	}

	static Match of(Quantity quantity, Quantity other) {
		return new Match(quantity, List.of(other), null, quantity.span().lastToken() + 1);
	}

}
