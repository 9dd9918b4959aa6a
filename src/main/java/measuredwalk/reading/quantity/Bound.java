package measuredwalk.reading.quantity;

/** What the words round an amount make of it. */
enum Bound {

	NONE, ABOUT, LOW, HIGH, EXACT;

	Amount applied(Amount amount) {
		return switch (this) {
			case LOW -> new Amount(amount.value(), amount.low(), null, amount.approximate(), false);
			case HIGH -> new Amount(amount.value(), null, amount.high(), amount.approximate(), false);
			case ABOUT -> amount.roughly();
			case EXACT -> amount.exactly();
			case NONE -> amount;
		};
	}

}
