package measuredwalk.reading.quantity;

import java.util.ArrayList;
import java.util.List;

import org.jspecify.annotations.Nullable;

/** Makes one range of two bounds: 'more than 10 but less than 20 minutes'. */
final class BoundPairs {

	private BoundPairs() {
	}

	static List<Match> merged(Terms terms, List<Match> matches) {
		List<Match> merged = new ArrayList<>(matches.size());
		for (Match match : matches) {
			Match before = merged.isEmpty() ? null : merged.get(merged.size() - 1);
			Match both = before == null ? null : both(terms, before, match);
			if (both == null) {
				merged.add(match);
			}
			else {
				merged.set(merged.size() - 1, both);
			}
		}
		return merged;
	}

	private static @Nullable Match both(Terms terms, Match one, Match other) {
		int between = one.end();
		boolean joined = other.quantity().span().firstToken() == between + 1
				&& (terms.is(between, "and") || terms.is(between, "but"));
		Quantity begin = joined ? inUnitOf(one, other) : one.quantity();
		Amount first = joined ? amount(begin) : null;
		Amount second = joined ? amount(other.quantity()) : null;
		if (first == null || second == null || !opposite(first, second)) {
			return null;
		}
		Span span = new Span(one.quantity().span().firstToken(), other.quantity().span().lastToken(),
				one.quantity().span().start(), other.quantity().span().end());
		Quantity quantity = whole(span, begin, other.quantity(), first, second);
		return quantity == null ? null : Match.of(quantity);
	}

	/** In 'more than 10 but less than 20 minutes' the ten are minutes too. */
	private static Quantity inUnitOf(Match one, Match other) {
		return one.quantity() instanceof BareNumber number && other.unit() != null ? Kinds.in(other.unit(), number)
				: one.quantity();
	}

	private static boolean opposite(Amount one, Amount other) {
		return (one.low() == null) != (other.low() == null) && (one.high() == null) != (other.high() == null)
				&& one.isRange() && other.isRange();
	}

	private static @Nullable Amount amount(Quantity quantity) {
		return quantity instanceof BareNumber number ? number.amount()
				: quantity instanceof Duration duration ? duration.seconds() : quantity instanceof Distance distance
						? distance.metres() : quantity instanceof Ordinal ordinal ? ordinal.place() : null;
	}

	/** The range, when the lower bound is below the upper one and the kinds agree. */
	private static @Nullable Quantity whole(Span span, Quantity one, Quantity other, Amount first, Amount second) {
		Amount low = first.high() == null ? first : second;
		Amount high = first.high() == null ? second : first;
		if (one.getClass() != other.getClass() || low.value() > high.value()) {
			return null;
		}
		Amount amount = Amount.between(low.value(), high.value());
		return other instanceof Duration ? new Duration(span, amount, 1)
				: other instanceof Distance ? new Distance(span, amount, 1)
						: other instanceof Ordinal ? new Ordinal(span, amount) : new BareNumber(span, amount, 1);
	}

}
