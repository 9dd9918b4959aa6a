package measuredwalk.reading;

import java.time.LocalDateTime;
import java.util.Set;

import org.jspecify.annotations.Nullable;

/**
 * A message to be read, with what is needed to understand it.
 *
 * @param text what the person typed, any Unicode, any length
 * @param question what it answers
 * @param now the message's own time in the household's zone
 * @param dogName the dog's name, or null when not known
 * @param medications kinds of medicine the dog is known to get, such as {@code nsaid} or
 * {@code anti-ngf}
 * @param language the two letters of the language that the household speaks
 */
public record OwnerMessage(String text, Question question, LocalDateTime now, @Nullable String dogName,
		Set<String> medications, String language) {

	/** The language that the rules know. */
	public static final String ENGLISH = "en";

	public OwnerMessage {
		medications = Set.copyOf(medications);
	}

	/**
	 * A message of a household that speaks English.
	 * @param text what the person typed
	 * @param question what it answers
	 * @param now the message's own time in the household's zone
	 * @param dogName the dog's name, or null
	 * @param medications kinds of medicine
	 */
	public OwnerMessage(String text, Question question, LocalDateTime now, @Nullable String dogName,
			Set<String> medications) {
		this(text, question, now, dogName, medications, ENGLISH);
	}

	OwnerMessage withText(String other) {
		return new OwnerMessage(other, this.question, this.now, this.dogName, this.medications, this.language);
	}

}
