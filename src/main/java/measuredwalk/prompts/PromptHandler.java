package measuredwalk.prompts;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.UUID;

import measuredwalk.household.Dog;

/** Does what a time that has come causes. Each is called inside a transaction. */
public interface PromptHandler {

	/**
	 * The time of a dog's morning check-in has come.
	 * @param dog the dog
	 * @param date the morning's day, in the household's zone
	 * @return what came of it
	 */
	Outcome morning(Dog dog, LocalDate date);

	/**
	 * A usual walk of a dog should be over.
	 * @param dog the dog
	 * @param date the walk's day, in the household's zone
	 * @param hour when the walk usually begins
	 * @return what came of it
	 */
	Outcome afterWalk(Dog dog, LocalDate date, LocalTime hour);

	/**
	 * The time of a dog's weekly question has come.
	 * @param dog the dog
	 * @param date the day, in the household's zone
	 * @return what came of it
	 */
	Outcome weekly(Dog dog, LocalDate date);

	/**
	 * The time of the picture of a dog's fortnight has come.
	 * @param dog the dog
	 * @param date its last day, in the household's zone
	 * @return what came of it
	 */
	Outcome fortnight(Dog dog, LocalDate date);

	/**
	 * The time has come to remind of a question, if it still waits and that is of use.
	 * @param checkInId the check-in
	 */
	void remind(UUID checkInId);

	/**
	 * The time has come to forget a chat whose dog was erased.
	 * @param chatId the chat
	 */
	void farewell(long chatId);

	/**
	 * When a dog usually walks.
	 * @param dog the dog
	 * @return the times, in the household's zone
	 */
	List<LocalTime> walkHours(Dog dog);

}
