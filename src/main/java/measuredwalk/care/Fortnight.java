package measuredwalk.care;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import measuredwalk.conversations.Part;
import measuredwalk.conversations.Phrase;
import measuredwalk.conversations.Replies;
import measuredwalk.household.Dog;
import measuredwalk.messaging.MessagePicture;
import measuredwalk.messaging.OutgoingMessage;
import measuredwalk.records.FortnightPictures;
import measuredwalk.signs.Sign;
import measuredwalk.suggestions.DogDay;
import measuredwalk.suggestions.MorningLook;
import org.springframework.stereotype.Component;

/** A dog's fortnight as a picture with its gist in words, and all of it in words. */
@Component
class Fortnight {

	private final FortnightPictures pictures;

	private final Replies replies;

	Fortnight(FortnightPictures pictures, Replies replies) {
		this.pictures = pictures;
		this.replies = replies;
	}

	/**
	 * The picture until a day.
	 * @return the message, or empty when nothing was told in that time
	 */
	Optional<OutgoingMessage> shown(Dog dog, LocalDate last) {
		return told(dog, last).map((days) -> message(dog, last, days));
	}

	/** The same in words, a day a line; empty when nothing was told in that time. */
	Optional<String> inWords(Dog dog, LocalDate last) {
		return told(dog, last).map((days) -> String.join("\n", this.pictures.picture(dog, days).lines()));
	}

	private Optional<List<DogDay>> told(Dog dog, LocalDate last) {
		return Optional.of(this.pictures.daysUntil(dog, last)).filter((days) -> days.stream().anyMatch(DogDay::told));
	}

	private OutgoingMessage message(Dog dog, LocalDate last, List<DogDay> days) {
		return OutgoingMessage.of(gist(dog, days))
			.with(new MessagePicture(FortnightPictures.name(dog, last), this.pictures.picture(dog, days).summary()));
	}

	private String gist(Dog dog, List<DogDay> days) {
		List<String> sentences = new ArrayList<>();
		sentences.add(walks(dog, days));
		long mornings = days.stream().filter((day) -> day.morning() != null).count();
		if (mornings > 0) {
			long worse = days.stream().filter((day) -> day.morning() == MorningLook.WORSE).count();
			sentences.add(this.replies.say(Phrase.FORTNIGHT_MORNINGS,
					Map.of("worse", this.replies.part(Part.WORSE_MORNINGS, worse, mornings))));
		}
		return String.join(" ", sentences);
	}

	private String walks(Dog dog, List<DogDay> days) {
		long walked = days.stream().filter((day) -> !day.walks().isEmpty()).count();
		if (walked == 0) {
			return this.replies.say(Phrase.FORTNIGHT_NO_WALKS, Map.of("dog", dog.name()));
		}
		long signs = days.stream().filter(Fortnight::withSigns).count();
		return this.replies.say(Phrase.FORTNIGHT_WALKS,
				Map.of("dog", dog.name(), "walked", this.replies.part(Part.DAYS_WITH_WALKS, walked, days.size()),
						"signs", this.replies.part(Part.DAYS_WITH_SIGNS, signs)));
	}

	private static boolean withSigns(DogDay day) {
		return day.walks().stream().flatMap((walk) -> walk.signs().stream()).anyMatch(Sign::present);
	}

}
