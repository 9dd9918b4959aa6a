package measuredwalk.reading.quantity;

/** An amount, a time or a number that stands in a message. */
public sealed interface Quantity permits Duration, Distance, BareNumber, ClockTime, TimeRange, DayPart, Temperature,
		Weight, Money, Dose, Speed, Ordinal, DateMention, Age, Percentage, Count, WholeDay, OtherMeasure {

	/**
	 * Where it stands.
	 * @return its place in the text
	 */
	Span span();

}
