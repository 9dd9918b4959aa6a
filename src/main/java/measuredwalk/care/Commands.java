package measuredwalk.care;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;

import measuredwalk.conversations.CheckIns;
import measuredwalk.conversations.Phrase;
import measuredwalk.household.Carer;
import measuredwalk.household.Households;
import measuredwalk.journal.Journal;
import measuredwalk.journal.JournalEntry;
import measuredwalk.messaging.IncomingMessage;
import org.springframework.stereotype.Component;

/** The words that begin with a stroke. */
@Component
class Commands {

	private final Map<String, BiConsumer<Turn, Reply>> ofCarers;

	private final Households households;

	private final Joining joining;

	private final CheckInTalk talk;

	private final SuggestionWords suggestions;

	private final EntryWords words;

	private final LogWords log;

	private final Journal journal;

	private final CheckIns checkIns;

	private final EvidenceWords evidence;

	private final HoursTalk hours;

	private final ExportWords export;

	private final Erasing erasing;

	private final Leaving leaving;

	Commands(Households households, Joining joining, CheckInTalk talk, SuggestionWords suggestions, EntryWords words,
			LogWords log, Journal journal, CheckIns checkIns, EvidenceWords evidence, HoursTalk hours,
			ExportWords export, Erasing erasing, Leaving leaving) {
		this.households = households;
		this.joining = joining;
		this.talk = talk;
		this.suggestions = suggestions;
		this.words = words;
		this.log = log;
		this.journal = journal;
		this.checkIns = checkIns;
		this.evidence = evidence;
		this.hours = hours;
		this.export = export;
		this.erasing = erasing;
		this.leaving = leaving;
		this.ofCarers = Map.of("/walk", (turn, reply) -> this.talk.begin(turn, CheckIns.AFTER_WALK, reply), "/morning",
				(turn, reply) -> this.talk.begin(turn, CheckIns.NEXT_MORNING, reply), "/today", this::today, "/why",
				this::why, "/log", (turn, reply) -> reply.say(this.log.lastDays(turn)), "/undo", this::undo, "/share",
				this::share, "/export", (turn, reply) -> reply.say(this.export.of(turn.dog())), "/erase",
				this.erasing::ask, "/stop", this::stop);
	}

	void run(IncomingMessage message, Reply reply) {
		String[] parts = message.text().strip().split("\\s+", 2);
		String command = parts[0].toLowerCase(Locale.ROOT).split("@", 2)[0];
		String rest = (parts.length > 1) ? parts[1].strip() : "";
		Optional<Carer> carer = this.households.carerIn(message.chatId());
		if (command.equals("/start")) {
			this.joining.start(message, rest, carer, reply);
		}
		else if (command.equals("/help")) {
			reply.say(Phrase.HELP);
		}
		else if (carer.isEmpty()) {
			reply.say(Phrase.HOW_TO_BEGIN);
		}
		else {
			run(command, rest, turn(message, carer.get()), reply);
		}
	}

	private void run(String command, String rest, Turn turn, Reply reply) {
		BiConsumer<Turn, Reply> known = this.ofCarers.get(command);
		if (command.equals("/hours")) {
			this.hours.command(turn, rest, reply);
		}
		else if (command.equals("/leave")) {
			this.leaving.command(turn, reply);
		}
		else if (known != null) {
			known.accept(turn, reply);
		}
		else {
			reply.say(Phrase.UNKNOWN_COMMAND);
		}
	}

	private Turn turn(IncomingMessage message, Carer carer) {
		return new Turn(message, carer, this.households.dogsOf(carer.householdId()).get(0));
	}

	private void today(Turn turn, Reply reply) {
		reply.say(this.suggestions.today(turn.dog()));
		reply.say(Phrase.IF_WRONG, Map.of("dog", turn.dog().name()));
	}

	private void why(Turn turn, Reply reply) {
		reply.say(Phrase.WHY, Map.of("reasons", String.join("\n", this.suggestions.reasons(turn.dog()))));
		List<String> evidence = this.evidence.sentences(turn.dog());
		if (!evidence.isEmpty()) {
			reply.say(String.join("\n", evidence));
		}
	}

	private void undo(Turn turn, Reply reply) {
		LocalDate today = turn.today();
		Optional<JournalEntry> undone = this.journal.undoLast(turn.teller(), turn.message().receivedAt());
		if (undone.isEmpty()) {
			reply.say(Phrase.NOTHING_TO_TAKE_BACK);
			return;
		}
		this.checkIns.close(turn.chatId());
		reply.say(Phrase.TAKEN_BACK, Map.of("entry", this.words.entry(undone.get(), today)));
		reply.say(this.suggestions.today(turn.dog()));
	}

	private void share(Turn turn, Reply reply) {
		String code = this.households.shareCode(turn.carer().householdId(), turn.carer().name());
		reply.say(Phrase.SHARE, Map.of("dog", turn.dog().name(), "code", code));
	}

	private void stop(Turn turn, Reply reply) {
		this.checkIns.close(turn.chatId());
		this.households.silence(turn.chatId());
		reply.say(Phrase.STOPPED, Map.of("dog", turn.dog().name()));
	}

}
