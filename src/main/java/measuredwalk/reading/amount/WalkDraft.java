package measuredwalk.reading.amount;

import java.time.LocalTime;

import measuredwalk.reading.WalkTold;
import measuredwalk.reading.quantity.Amount;
import org.jspecify.annotations.Nullable;

/** A walk while its parts are being found. */
final class WalkDraft {

	private final Amount minutes;

	private final Placed placed;

	@Nullable LocalTime start;

	WalkDraft(Amount minutes, Placed placed) {
		this.minutes = minutes;
		this.placed = placed;
	}

	Amount minutes() {
		return this.minutes;
	}

	Placed placed() {
		return this.placed;
	}

	WalkDraft plus(Amount more) {
		double both = this.minutes.value() + more.value();
		WalkDraft sum = new WalkDraft(Amount.of(both), this.placed);
		sum.start = this.start;
		return sum;
	}

	/** The same walk, whose last part was told there. */
	WalkDraft upTo(Placed last) {
		WalkDraft longer = new WalkDraft(this.minutes, last);
		longer.start = this.start;
		return longer;
	}

	WalkDraft or(Amount other) {
		return new WalkDraft(Amount.between(this.minutes.value(), other.value()), this.placed);
	}

	WalkTold told(@Nullable Double distance, @Nullable LocalTime begun) {
		Double low = (this.minutes.low() == null) ? this.minutes.value() : this.minutes.low();
		Double high = (this.minutes.high() == null) ? this.minutes.value() : this.minutes.high();
		return new WalkTold(rounded(this.minutes.value()), rounded(low), rounded(high), distance, begun, null, null);
	}

	private static double rounded(double minutes) {
		return Math.round(minutes * 10) / 10.0;
	}

}
