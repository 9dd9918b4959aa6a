package measuredwalk.clinic.pages;

import java.time.Clock;
import java.time.Duration;
import java.time.ZoneOffset;
import java.util.List;

import measuredwalk.household.Households;
import measuredwalk.messaging.DeadLetter;
import measuredwalk.messaging.DeadLetters;
import org.springframework.stereotype.Component;

/** What did not get through in the last fortnight, in words, without anybody's words. */
@Component
class DeadLetterBoard {

	private static final Duration SHOWN_FOR = Duration.ofDays(14);

	private static final int MOST = 20;

	private final DeadLetters letters;

	private final Households households;

	private final Clock clock;

	DeadLetterBoard(DeadLetters letters, Households households, Clock clock) {
		this.letters = letters;
		this.households = households;
		this.clock = clock;
	}

	List<String> lines() {
		return this.letters.since(this.clock.instant().minus(SHOWN_FOR), MOST).stream().map(this::line).toList();
	}

	private String line(DeadLetter letter) {
		String what = switch (letter.kind()) {
			case NOT_SENT -> "A message to " + who(letter) + " could not be sent";
			case NOT_HANDLED -> "A message from " + who(letter) + " could not be handled";
			case NOT_READ -> "Something came in by " + letter.channel() + " that could not be read";
		};
		return what + ", " + Wording.moment(letter.at(), ZoneOffset.UTC) + " UTC: " + letter.why();
	}

	private String who(DeadLetter letter) {
		Long chat = letter.chatId();
		return (chat == null) ? "an unknown chat"
				: this.households.carerIn(chat)
					.map((carer) -> carer.name())
					.orElse("a chat by " + letter.channel() + " that belongs to nobody at home");
	}

}
