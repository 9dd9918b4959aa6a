package measuredwalk.care;

import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

import measuredwalk.conversations.Phrase;
import measuredwalk.conversations.Replies;
import measuredwalk.household.Dog;
import measuredwalk.household.Hours;
import measuredwalk.household.Households;
import measuredwalk.messaging.Outbox;
import measuredwalk.prompts.Prompts;
import org.springframework.stereotype.Component;

/**
 * {@code /hours}: shows when the bot asks, and changes it. Right after it was shown, the
 * plain words do without the command.
 */
@Component
class HoursTalk {

	private final Households households;

	private final WalkHours walkHours;

	private final Prompts prompts;

	private final Replies replies;

	private final Outbox outbox;

	private final Figures figures;

	HoursTalk(Households households, WalkHours walkHours, Prompts prompts, Replies replies, Outbox outbox,
			Figures figures) {
		this.figures = figures;
		this.households = households;
		this.walkHours = walkHours;
		this.prompts = prompts;
		this.replies = replies;
		this.outbox = outbox;
	}

	void command(Turn turn, String words, Reply reply) {
		if (words.isEmpty()) {
			reply.say(shown(turn.dog()));
		}
		else if (!changed(turn, words, reply)) {
			reply.say(Phrase.HOURS_NOT_UNDERSTOOD);
		}
	}

	/**
	 * Words that wish nothing of the kind are most of all, so nothing is looked up for
	 * them.
	 */
	boolean answered(Turn turn, Reply reply) {
		return HoursWish.read(turn.text(), turn.dog().household().hours()).understood() && justShown(turn)
				&& changed(turn, turn.text(), reply);
	}

	private boolean justShown(Turn turn) {
		return this.outbox.lastText(turn.chatId()).filter(shown(turn.dog())::equals).isPresent();
	}

	private boolean changed(Turn turn, String words, Reply reply) {
		HoursWish wish = HoursWish.read(Ears.english(words, turn.speech(), turn.allNames()),
				turn.dog().household().hours());
		if (!wish.understood()) {
			return false;
		}
		this.households.keepHours(turn.carer().householdId(), wish.hours());
		List<Dog> dogs = this.households.dogsOf(turn.carer().householdId());
		if (!wish.walks().isEmpty()) {
			dogs.forEach((dog) -> this.households.walksAt(dog.id(), wish.walks()));
		}
		List<Dog> changed = this.households.dogsOf(turn.carer().householdId());
		changed.forEach(this.prompts::expect);
		reply.say(Phrase.HOURS_CHANGED);
		reply.say(shown(this.households.dog(turn.dog().id()).orElseThrow()));
		return true;
	}

	private String shown(Dog dog) {
		Hours hours = dog.household().hours();
		String days = hours.daysOff().isEmpty() ? this.replies.say(Phrase.HOURS_EVERY_DAY)
				: this.replies.say(Phrase.HOURS_DAYS_OFF, Map.of("days", this.figures.everyWeek(hours.daysOff())));
		String picture = this.replies.say(hours.fortnightPicture() ? Phrase.HOURS_PICTURE : Phrase.HOURS_NO_PICTURE);
		return this.replies.say(Phrase.HOURS, Map.of("morning", hours.morningAt(), "walks", walksOfAll(dog), "from",
				hours.quietFrom(), "until", hours.quietUntil(), "days", days, "picture", picture));
	}

	private String walksOfAll(Dog dog) {
		if (!dog.household().hours().walkQuestions()) {
			return this.replies.say(Phrase.HOURS_NO_WALK_QUESTIONS);
		}
		return this.households.dogsOf(dog.household().id()).stream().map(this::walks).collect(Collectors.joining(" "));
	}

	private String walks(Dog dog) {
		List<LocalTime> times = this.walkHours.of(dog);
		if (times.isEmpty()) {
			return this.replies.say(Phrase.HOURS_NO_WALK_TIMES, Map.of("dog", dog.name()));
		}
		String list = this.figures.andEach(times.stream().sorted().map(LocalTime::toString).toList());
		return this.replies.say(Phrase.HOURS_WALKS, Map.of("dog", dog.name(), "times", list));
	}

}
