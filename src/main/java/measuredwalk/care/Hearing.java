package measuredwalk.care;

import java.util.Optional;

import measuredwalk.conversations.CheckIn;
import measuredwalk.conversations.CheckIns;
import measuredwalk.reading.Reading;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** Takes words about one dog: what cannot wait comes before any conversation. */
@Component
class Hearing {

	private final CheckIns checkIns;

	private final Ears ears;

	private final Urgency urgency;

	private final EntryWriter writer;

	private final WeeklyQuestion weekly;

	private final DogTalk talk;

	private final Aside aside;

	private final LongDayTalk longDays;

	Hearing(CheckIns checkIns, Ears ears, Urgency urgency, EntryWriter writer, WeeklyQuestion weekly, DogTalk talk,
			Aside aside, LongDayTalk longDays) {
		this.longDays = longDays;
		this.checkIns = checkIns;
		this.ears = ears;
		this.urgency = urgency;
		this.writer = writer;
		this.weekly = weekly;
		this.talk = talk;
		this.aside = aside;
	}

	/** The conversation that is open in the chat, if it is about this dog. */
	private Optional<CheckIn> open(Turn turn) {
		return this.checkIns.current(turn.chatId()).filter((open) -> turn.dog().id().equals(open.dogId()));
	}

	Reading read(Turn turn) {
		return this.ears.read(turn, open(turn).orElse(null));
	}

	void hear(Turn turn, Reply reply) {
		CheckIn open = open(turn).orElse(null);
		Reading reading = this.ears.read(turn, open);
		if (settledAtOnce(turn, reading, open, reply)) {
			return;
		}
		Optional<LongDayWish> wish = this.longDays.wish(turn);
		wish.ifPresent((each) -> this.longDays.answer(turn, each, reply));
		if (wish.isEmpty()) {
			converse(turn, reading, open, reply);
		}
		else if (!wish.get().rest().isBlank()) {
			Turn rest = turn.saying(wish.get().rest());
			converse(rest, this.ears.read(rest, open), open, reply);
		}
	}

	private void converse(Turn turn, Reading reading, @Nullable CheckIn open, Reply reply) {
		if (!this.weekly.answered(turn, reading, open, reply)) {
			this.talk.converse(turn, reading, WeeklyQuestion.isOpen(open) ? null : open, reply);
		}
	}

	/**
	 * Takes words about one dog beside a conversation about another: they are written
	 * down and nothing is asked. An answer to a question about the other is read as an
	 * answer for this one too.
	 */
	boolean hearAside(Turn turn, Reply reply) {
		CheckIn asIf = this.checkIns.current(turn.chatId())
			.filter((open) -> !open.asked().isEmpty() && !WeeklyQuestion.isOpen(open))
			.map((open) -> open.asIfAbout(turn.dog().id()))
			.orElse(null);
		Reading reading = this.ears.read(turn, asIf);
		if (settledAtOnce(turn, reading, asIf, reply)) {
			return true;
		}
		Optional<LongDayWish> wish = this.longDays.wish(turn);
		wish.ifPresent((each) -> this.longDays.answer(turn, each, reply));
		Turn left = wish.map((each) -> turn.saying(each.rest())).orElse(turn);
		Reading rest = wish.isPresent() ? this.ears.read(left, asIf) : reading;
		return this.aside.take(left, rest, asIf, reply) || wish.isPresent();
	}

	private boolean settledAtOnce(Turn turn, Reading reading, @Nullable CheckIn open, Reply reply) {
		boolean urgent = Urgency.cannotWait(reading);
		if (urgent || turn.carer().silenced()) {
			this.writer.write(turn, reading, open);
		}
		if (urgent) {
			this.urgency.answer(turn, reading, reply);
		}
		return urgent || turn.carer().silenced();
	}

}
