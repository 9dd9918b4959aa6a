package measuredwalk.care;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

import measuredwalk.conversations.CheckIn;
import measuredwalk.conversations.CheckIns;
import measuredwalk.conversations.Part;
import measuredwalk.conversations.Phrase;
import measuredwalk.conversations.Replies;
import measuredwalk.journal.Journal;
import measuredwalk.journal.MorningEntry;
import measuredwalk.journal.WalkEntry;
import measuredwalk.reading.Reading;
import measuredwalk.signs.Sign;
import measuredwalk.signs.SignKind;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/**
 * Dragging a hind leg on a walk is a common sign of arthritis and is logged as one; told
 * for the first time, it is asked about once, and the clinic gets a review. New dragging
 * of a leg that cannot be placed is an emergency (clinical rules: Levels of a message).
 */
@Component
class FirstDragging {

	private static final String KEY = "dragging";

	private static final String ASKED = "asked";

	private static final String ANSWERED = "answered";

	private static final List<Part> CHOICES = List.of(Part.NOT_NEW, Part.NEW_TODAY, Part.NEW_NOT_FLAT);

	private static final List<String> NOT_NEW = List.of("not new", "isn't new", "isnt new", "nothing new", "always");

	private static final List<String> NEW = List.of("new", "today", "sudden", "yes", "never before");

	private final Journal journal;

	private final CheckIns checkIns;

	private final Ears ears;

	private final Urgency urgency;

	private final Replies replies;

	FirstDragging(Journal journal, CheckIns checkIns, Ears ears, Urgency urgency, Replies replies) {
		this.replies = replies;
		this.journal = journal;
		this.checkIns = checkIns;
		this.ears = ears;
		this.urgency = urgency;
	}

	/**
	 * Whether a message tells of dragging and none did before; asked before it is
	 * written.
	 */
	boolean isFirst(Turn turn, Reading reading) {
		return reading.signs().stream().anyMatch(FirstDragging::dragging) && !toldBefore(turn);
	}

	void ask(Turn turn, Reply reply) {
		review(turn);
		Optional<CheckIn> open = this.checkIns.current(turn.chatId());
		open.ifPresent((checkIn) -> this.checkIns.remember(checkIn.id(), KEY, ASKED));
		reply.ask(Phrase.DRAGGING_NEW, Map.of("dog", turn.dog().name()),
				CHOICES.stream().map((choice) -> this.replies.part(choice)).toList());
	}

	void review(Turn turn) {
		this.urgency.review(turn, "Hind limb dragging told for the first time");
	}

	/**
	 * Takes the answer, if this was asked.
	 * @return true when the message was that answer and nothing else
	 */
	boolean answered(Turn turn, @Nullable CheckIn open, Reply reply) {
		if (open == null || !ASKED.equals(open.remembered().get(KEY))) {
			return false;
		}
		this.checkIns.remember(open.id(), KEY, ANSWERED);
		String plain = turn.english().toLowerCase(Locale.ROOT);
		boolean isNew = NEW.stream().anyMatch(plain::contains) && NOT_NEW.stream().noneMatch(plain::contains);
		Reading inPlace = this.ears.aboutDragging(turn, isNew);
		if (Urgency.cannotWait(inPlace)) {
			this.urgency.answer(turn, inPlace, reply);
			return true;
		}
		if (NOT_NEW.stream().noneMatch(plain::contains) && !plain.startsWith("no")) {
			return false;
		}
		reply.say(Phrase.DRAGGING_NOTED);
		this.checkIns.waiting(open.id(), Map.of("dog", turn.dog().name())).ifPresent(reply::ask);
		return true;
	}

	private static boolean dragging(Sign sign) {
		return sign.present() && sign.kind() == SignKind.HIND_LIMB_DRAGGING;
	}

	private boolean toldBefore(Turn turn) {
		Stream<Sign> onWalks = this.journal.walkHistory(turn.dog().id())
			.stream()
			.map(WalkEntry::facts)
			.flatMap((facts) -> facts.signs().stream());
		Stream<Sign> onMornings = this.journal.morningHistory(turn.dog().id())
			.stream()
			.map(MorningEntry::facts)
			.flatMap((facts) -> facts.signs().stream());
		return Stream.concat(onWalks, onMornings).anyMatch(FirstDragging::dragging);
	}

}
