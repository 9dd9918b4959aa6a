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
 */
public record OwnerMessage(String text, Question question, LocalDateTime now, @Nullable String dogName,
		Set<String> medications) {

	public OwnerMessage {
		medications = Set.copyOf(medications);
	}

}
