package measuredwalk.reading.quantity;

/** What a unit measures. */
enum Dimension {

	TIME, LENGTH, WEIGHT, MONEY, DOSE, SPEED, TEMPERATURE, PERCENT, TIMES, AGE, OTHER

}
