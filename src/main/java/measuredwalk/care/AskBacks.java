package measuredwalk.care;

import java.util.List;
import java.util.Map;
import java.util.Optional;

import measuredwalk.conversations.CheckIn;
import measuredwalk.conversations.CheckIns;
import measuredwalk.conversations.Phrase;
import measuredwalk.reading.AskBack;
import measuredwalk.reading.Correction;
import measuredwalk.reading.Reading;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/**
 * Asks once which of two readings was meant; the value stays marked unsure until then.
 */
@Component
class AskBacks {

	private static final String ASKED = "asked-back";

	private final CheckIns checkIns;

	private final ReadingMeters meters;

	private final AskBackWords words;

	AskBacks(CheckIns checkIns, ReadingMeters meters, AskBackWords words) {
		this.meters = meters;
		this.words = words;
		this.checkIns = checkIns;
	}

	void askIfUnsure(Turn turn, Reading reading, Reply reply) {
		AskBack unsure = reading.askBack();
		if (unsure == null || unsure.readings().size() < 2) {
			return;
		}
		Optional<CheckIn> open = this.checkIns.current(turn.chatId());
		if (open.isPresent() && !open.get().remembered().containsKey(ASKED)) {
			this.checkIns.remember(open.get().id(), ASKED, unsure.field());
			List<String> readings = this.words.readings(unsure);
			this.meters.askedBackAmount();
			reply.ask(Phrase.WHICH_WAS_IT, Map.of("first", readings.get(0), "second", readings.get(1)), readings);
		}
	}

	/** A bare amount after an ask-back about an amount puts that amount right. */
	Optional<Correction> answered(Reading reading, @Nullable CheckIn open) {
		String field = (open != null) ? open.remembered().get(ASKED) : null;
		if (open == null || field == null || field.isEmpty()) {
			return Optional.empty();
		}
		this.checkIns.remember(open.id(), ASKED, "");
		boolean bareAmount = reading.walks().size() == 1 && reading.signs().isEmpty()
				&& reading.walks().get(0).minutes() != null;
		return (bareAmount && field.endsWith("minutes"))
				? Optional.of(new Correction(reading.walks().get(0).minutes(), null, null, null, null))
				: Optional.empty();
	}

}
