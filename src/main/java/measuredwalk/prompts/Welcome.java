package measuredwalk.prompts;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDateTime;

import measuredwalk.household.Dog;
import measuredwalk.household.Hours;
import org.springframework.stereotype.Component;

/** Whether a household wants to hear of an occasion now. */
@Component
class Welcome {

	private final Clock clock;

	Welcome(Clock clock) {
		this.clock = clock;
	}

	/**
	 * Not on a day off, not on another day than its own, not too late to be of use, and
	 * not in the quiet hours, except at the morning hour that the household chose.
	 */
	boolean is(PromptKind kind, Dog dog, Occasion occasion) {
		Instant now = this.clock.instant();
		LocalDateTime time = LocalDateTime.ofInstant(now, dog.household().timeZone());
		Hours hours = dog.household().hours();
		boolean quiet = kind != PromptKind.MORNING && hours.quietAt(time.toLocalTime());
		boolean unwanted = (kind == PromptKind.AFTER_WALK && !hours.walkQuestions())
				|| (kind == PromptKind.FORTNIGHT && !hours.fortnightPicture());
		return !quiet && !unwanted && !hours.offOn(occasion.date()) && time.toLocalDate().equals(occasion.date())
				&& !kind.tooLate(dog, occasion, now);
	}

}
