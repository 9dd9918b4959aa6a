package measuredwalk.conversations;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * The running conversations, one to a chat. They live in the database, so that a restart
 * loses no place; one that nobody answers closes by itself after the time in its script.
 */
@Service
@Transactional
public class CheckIns {

	/** Beginning without a clinic. */
	public static final String WELCOME = "welcome";

	/** The check-in after a walk. */
	public static final String AFTER_WALK = "after-walk";

	/** The check-in on the next morning. */
	public static final String NEXT_MORNING = "next-morning";

	/** The one question of a week. */
	public static final String WEEKLY = "weekly";

	private final Scripts scripts;

	private final CheckInRows rows;

	private final Clock clock;

	CheckIns(Scripts scripts, CheckInRows rows, Clock clock) {
		this.scripts = scripts;
		this.rows = rows;
		this.clock = clock;
	}

	/**
	 * Begins a conversation in a chat; one that was open there closes.
	 * @param chatId the chat
	 * @param dogId the dog that it is about, or null before there is one
	 * @param conversation its name
	 * @param aboutDate the day that it asks about, in the household's zone
	 * @return the conversation, with nothing asked yet
	 */
	public CheckIn open(long chatId, @Nullable UUID dogId, String conversation, LocalDate aboutDate) {
		close(chatId);
		Script script = this.scripts.get(conversation);
		CheckInEntity entity = new CheckInEntity(chatId, dogId, script, aboutDate, this.clock.instant());
		return this.rows.save(entity).view(script);
	}

	/**
	 * The conversation that is open in a chat.
	 * @param chatId the chat
	 * @return the conversation, or empty
	 */
	public Optional<CheckIn> current(long chatId) {
		return openRows(chatId).stream()
			.filter((row) -> row.open(this.clock.instant()))
			.findFirst()
			.map((row) -> row.view(this.scripts.get(row.scriptId())));
	}

	/**
	 * Tells whether a conversation about a dog's day was begun already, in any chat.
	 * @param dogId the dog
	 * @param conversation its name
	 * @param aboutDate the day
	 * @return true when it was
	 */
	@Transactional(readOnly = true)
	public boolean held(UUID dogId, String conversation, LocalDate aboutDate) {
		return this.rows.existsByDogIdAndScriptIdAndAboutDate(dogId, conversation, aboutDate);
	}

	/**
	 * The conversations about a dog's days, open or over.
	 * @param dogId the dog
	 * @param conversation their name
	 * @param from the first day
	 * @return all of them
	 */
	@Transactional(readOnly = true)
	public List<CheckIn> about(UUID dogId, String conversation, LocalDate from) {
		Script script = this.scripts.get(conversation);
		return this.rows.findByDogIdAndScriptIdAndAboutDateGreaterThanEqual(dogId, conversation, from)
			.stream()
			.map((row) -> row.view(script))
			.toList();
	}

	/**
	 * The conversations about a dog's day that are open in other chats and have written
	 * nothing of a walk yet.
	 * @param dogId the dog
	 * @param conversation their name
	 * @param aboutDate the day
	 * @param chatId the chat that is left out
	 * @return all of them
	 */
	@Transactional(readOnly = true)
	public List<CheckIn> openElsewhere(UUID dogId, String conversation, LocalDate aboutDate, long chatId) {
		Script script = this.scripts.get(conversation);
		return this.rows.findByDogIdAndScriptIdAndAboutDateGreaterThanEqual(dogId, conversation, aboutDate)
			.stream()
			.filter((row) -> row.open(this.clock.instant()))
			.map((row) -> row.view(script))
			.filter((each) -> each.aboutDate().equals(aboutDate) && each.chatId() != chatId && each.entryId() == null)
			.toList();
	}

	/**
	 * A conversation that is still open and whose first question nobody answered yet.
	 * @param id the conversation
	 * @return the conversation, or empty
	 */
	@Transactional(readOnly = true)
	public Optional<CheckIn> unanswered(UUID id) {
		return this.rows.findById(id)
			.filter((row) -> row.open(this.clock.instant()) && row.unanswered())
			.map((row) -> row.view(this.scripts.get(row.scriptId())));
	}

	/**
	 * Closes what is open in a chat.
	 * @param chatId the chat
	 */
	public void close(long chatId) {
		openRows(chatId).forEach(CheckInEntity::close);
	}

	/**
	 * Takes what an answer settled and gives the next question. An answer that settles
	 * nothing is asked for once more in other words, then the step is left out.
	 * @param id the conversation
	 * @param settled what is known by now
	 * @param circumstances what holds by now
	 * @param places what stands in the places of a question, such as {@code dog}
	 * @return the question to send, or empty when the conversation is over
	 */
	public Optional<Prompt> next(UUID id, Set<Slot> settled, Set<Circumstance> circumstances, Map<String, ?> places) {
		CheckInEntity row = row(id);
		Script script = this.scripts.get(row.scriptId());
		row.settle(settled);
		Optional<Step> waiting = row.asked(script).filter((step) -> step.worthAsking(row.settled(), circumstances));
		if (waiting.isPresent() && !row.wasAskedAgain()) {
			row.askAgain();
			return waiting.map((step) -> prompt(step.askAgain(), step, places));
		}
		waiting.ifPresent((step) -> row.settle(step.settles()));
		return ask(row, script, circumstances, places);
	}

	private Optional<Prompt> ask(CheckInEntity row, Script script, Set<Circumstance> circumstances,
			Map<String, ?> places) {
		Optional<Step> next = script.next(row.settled(), circumstances, row.questionsAsked());
		next.ifPresentOrElse(row::ask, row::finish);
		return next.map((step) -> prompt(step.ask(), step, places));
	}

	/**
	 * Says which journal entry the answers of a conversation add to.
	 * @param id the conversation
	 * @param entryId the entry
	 */
	public void writesTo(UUID id, UUID entryId) {
		row(id).writesTo(entryId);
	}

	/**
	 * Keeps a short fact with a conversation.
	 * @param id the conversation
	 * @param key its name
	 * @param fact the fact
	 */
	public void remember(UUID id, String key, String fact) {
		row(id).remember(key, fact);
	}

	/**
	 * The question that waits for an answer, to be asked once more after an interruption.
	 * @param id the conversation
	 * @param places what stands in the places of a question, such as {@code dog}
	 * @return the question, or empty when none waits
	 */
	@Transactional(readOnly = true)
	public Optional<Prompt> waiting(UUID id, Map<String, ?> places) {
		CheckInEntity row = row(id);
		return row.asked(this.scripts.get(row.scriptId())).map((step) -> prompt(step.ask(), step, places));
	}

	private Prompt prompt(String text, Step step, Map<String, ?> places) {
		return new Prompt(Replies.fill(text, places), step.choices());
	}

	private CheckInEntity row(UUID id) {
		return this.rows.findById(id).orElseThrow();
	}

	private List<CheckInEntity> openRows(long chatId) {
		return this.rows.findByChatIdAndStateOrderByOpenedAtDesc(chatId, CheckInEntity.State.OPEN);
	}

}
