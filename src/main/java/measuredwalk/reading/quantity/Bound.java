package measuredwalk.reading.quantity;

/** What the words round an amount make of it. */
enum Bound {

	NONE, ABOUT, LOW, HIGH, EXACT;

	Amount applied(Amount amount) {
		return switch (this) {
			case LOW -> new Amount(amount.value(), amount.low(), null, amount.approximate());
			case HIGH -> new Amount(amount.value(), null, amount.high(), amount.approximate());
			case ABOUT -> amount.roughly();
			case NONE, EXACT -> amount;
		};
	}

}
