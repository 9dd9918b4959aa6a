package measuredwalk.prompts;

import java.time.LocalDate;
import java.util.UUID;

/** Does what a time that has come causes. */
public interface PromptHandler {

	/**
	 * The time of a dog's morning check-in has come. Called inside a transaction.
	 * @param dogId the dog
	 * @param date the morning's day, in the household's zone
	 */
	void morning(UUID dogId, LocalDate date);

}
