package measuredwalk.conversations;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import measuredwalk.signs.Coded;
import org.jspecify.annotations.Nullable;

@Entity
@SuppressWarnings("UnusedVariable") // Columns that are written for the record and read by
									// SQL only.
@Table(name = "check_in")
class CheckInEntity {

	enum State {

		OPEN, DONE, CLOSED

	}

	@Id
	private UUID id;

	private long chatId;

	private @Nullable UUID dogId;

	private String scriptId;

	private int scriptVersion;

	private LocalDate aboutDate;

	private @Nullable String askedStep;

	private int questionsAsked;

	private boolean askedAgain;

	private String settledSlots;

	private String remembered;

	private @Nullable UUID entryId;

	private Instant openedAt;

	private Instant closesAt;

	@Enumerated(EnumType.STRING)
	private State state;

	protected CheckInEntity() {
	}

	CheckInEntity(long chatId, @Nullable UUID dogId, Script script, LocalDate aboutDate, Instant now) {
		this.id = UUID.randomUUID();
		this.chatId = chatId;
		this.dogId = dogId;
		this.scriptId = script.id();
		this.scriptVersion = script.version();
		this.aboutDate = aboutDate;
		this.settledSlots = "";
		this.remembered = "";
		this.openedAt = now;
		this.closesAt = now.plus(script.closesAfter());
		this.state = State.OPEN;
	}

	/** The step that waits for an answer, if the script still has it. */
	Optional<Step> asked(Script script) {
		return Optional.ofNullable(this.askedStep).flatMap(script::step);
	}

	String scriptId() {
		return this.scriptId;
	}

	boolean open(Instant now) {
		return this.state == State.OPEN && now.isBefore(this.closesAt);
	}

	boolean unanswered() {
		return this.questionsAsked == 1 && !this.askedAgain && this.entryId == null && this.settledSlots.isEmpty();
	}

	boolean wasAskedAgain() {
		return this.askedAgain;
	}

	int questionsAsked() {
		return this.questionsAsked;
	}

	Set<Slot> settled() {
		Set<Slot> slots = EnumSet.noneOf(Slot.class);
		Arrays.stream(this.settledSlots.split(","))
			.filter((code) -> !code.isEmpty())
			.forEach((code) -> slots.add(Coded.of(Slot.class, code)));
		return slots;
	}

	void settle(Set<Slot> slots) {
		Set<Slot> all = settled();
		all.addAll(slots);
		this.settledSlots = all.stream().map(Slot::code).collect(Collectors.joining(","));
	}

	void ask(Step step) {
		this.askedStep = step.id();
		this.askedAgain = false;
		this.questionsAsked++;
	}

	void askAgain() {
		this.askedAgain = true;
	}

	void finish() {
		this.state = State.DONE;
		this.askedStep = null;
	}

	void close() {
		this.state = State.CLOSED;
	}

	void writesTo(UUID entry) {
		this.entryId = entry;
	}

	void remember(String key, String fact) {
		Map<String, String> facts = facts();
		facts.put(key, fact);
		this.remembered = facts.entrySet()
			.stream()
			.map((entry) -> entry.getKey() + "=" + entry.getValue().replace('\n', ' '))
			.collect(Collectors.joining("\n"));
	}

	private Map<String, String> facts() {
		Map<String, String> facts = new LinkedHashMap<>();
		this.remembered.lines().forEach((line) -> {
			int middle = line.indexOf('=');
			facts.put(line.substring(0, middle), line.substring(middle + 1));
		});
		return facts;
	}

	CheckIn view(Script script) {
		return new CheckIn(this.id, this.chatId, this.dogId, this.scriptId, script.reads(), this.aboutDate,
				asked(script).map(Step::settles).orElse(Set.of()), this.askedAgain, settled(), facts(), this.entryId);
	}

}
