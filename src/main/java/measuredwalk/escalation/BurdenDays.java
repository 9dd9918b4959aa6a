package measuredwalk.escalation;

import java.time.LocalDate;
import java.util.List;

import measuredwalk.household.Dog;

/** Knows the days that the rules about a dog's course look at. */
public interface BurdenDays {

	/**
	 * The days of a dog until a day.
	 * @param dog the dog
	 * @param until the last day
	 * @param days how many days at most, at least 1; none before the dog was taken on
	 * @return the days in a row, the first day first; at least the last one
	 */
	List<BurdenDay> of(Dog dog, LocalDate until, int days);

	/**
	 * How many flares there were: spells of being worse than the dog's own usual on every
	 * day told of, that last into a further day.
	 * @param dog the dog
	 * @param until the last day
	 * @param days how many days to look at, at least 1
	 * @return the count
	 */
	int flares(Dog dog, LocalDate until, int days);

}
