package measuredwalk.care;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;

import measuredwalk.conversations.CheckIn;
import measuredwalk.conversations.CheckIns;
import measuredwalk.household.Carer;
import measuredwalk.household.Dog;
import measuredwalk.journal.Journal;
import measuredwalk.journal.NoteTopic;
import measuredwalk.journal.Notes;
import measuredwalk.prompts.Outcome;
import measuredwalk.prompts.PromptHandler;
import measuredwalk.speech.Speaking;
import org.springframework.stereotype.Component;

/**
 * The questions that come by themselves: to one carer, and only if nobody told yet. None
 * pushes aside a question that waits, but that the morning comes before last night's
 * walk.
 */
@Component
class PromptStory implements PromptHandler {

	private final Journal journal;

	private final Notes notes;

	private final CheckIns checkIns;

	private final WhomToAsk whom;

	private final WalkHours walkHours;

	private final Asking asking;

	private final WeeklyQuestion weekly;

	private final SundayPicture picture;

	private final Reminder reminder;

	private final Erasing erasing;

	PromptStory(Journal journal, Notes notes, CheckIns checkIns, WhomToAsk whom, WalkHours walkHours, Asking asking,
			WeeklyQuestion weekly, SundayPicture picture, Reminder reminder, Erasing erasing) {
		this.journal = journal;
		this.notes = notes;
		this.checkIns = checkIns;
		this.whom = whom;
		this.walkHours = walkHours;
		this.asking = asking;
		this.weekly = weekly;
		this.picture = picture;
		this.reminder = reminder;
		this.erasing = erasing;
	}

	@Override
	public Outcome morning(Dog dog, LocalDate date) {
		return Speaking.as(dog.household().speech(), () -> askOfMorning(dog, date));
	}

	private Outcome askOfMorning(Dog dog, LocalDate date) {
		Optional<Carer> carer = this.whom.first(dog);
		if (carer.isEmpty() || this.journal.morningOf(dog.id(), date).isPresent()
				|| this.checkIns.held(dog.id(), CheckIns.NEXT_MORNING, date)) {
			return Outcome.SETTLED;
		}
		Optional<CheckIn> open = this.checkIns.current(carer.get().chatId());
		if (open.isPresent() && !open.get().conversation().equals(CheckIns.AFTER_WALK)
				&& this.asking.waits(carer.get())) {
			return Outcome.NOT_NOW;
		}
		this.asking.remindLater(this.asking.ask(dog, carer.get(), CheckIns.NEXT_MORNING, date, Set.of(),
				"morning/" + dog.id() + "/" + date));
		return Outcome.SETTLED;
	}

	@Override
	public Outcome afterWalk(Dog dog, LocalDate date, LocalTime hour) {
		return Speaking.as(dog.household().speech(), () -> askAfterWalk(dog, date, hour));
	}

	private Outcome askAfterWalk(Dog dog, LocalDate date, LocalTime hour) {
		Optional<Carer> carer = this.whom.first(dog);
		if (carer.isEmpty() || this.walkHours.toldOf(dog, date, hour) || askedBefore(dog, date, hour)
				|| this.notes.any(dog.id(), NoteTopic.NO_WALK, date)) {
			return Outcome.SETTLED;
		}
		if (this.asking.waits(carer.get())) {
			return Outcome.NOT_NOW;
		}
		CheckIn checkIn = this.asking.ask(dog, carer.get(), CheckIns.AFTER_WALK, date, Set.of(),
				"walk/" + dog.id() + "/" + date + "/" + hour);
		this.checkIns.remember(checkIn.id(), WalkHours.ASKED_FOR, hour.toString());
		this.asking.remindLater(checkIn);
		return Outcome.SETTLED;
	}

	private boolean askedBefore(Dog dog, LocalDate date, LocalTime hour) {
		return this.checkIns.about(dog.id(), CheckIns.AFTER_WALK, date)
			.stream()
			.anyMatch((checkIn) -> hour.toString().equals(checkIn.remembered().get(WalkHours.ASKED_FOR)));
	}

	@Override
	public Outcome weekly(Dog dog, LocalDate date) {
		return Speaking.as(dog.household().speech(),
				() -> this.whom.first(dog).map((carer) -> this.weekly.ask(dog, carer, date)).orElse(Outcome.SETTLED));
	}

	@Override
	public Outcome fortnight(Dog dog, LocalDate date) {
		Speaking.as(dog.household().speech(), () -> this.picture.send(dog, date));
		return Outcome.SETTLED;
	}

	@Override
	public void remind(UUID checkInId) {
		this.checkIns.unanswered(checkInId).ifPresent(this.reminder::remind);
	}

	@Override
	public void farewell(long chatId) {
		this.erasing.forget(chatId);
	}

	@Override
	public List<LocalTime> walkHours(Dog dog) {
		return this.walkHours.of(dog);
	}

}
