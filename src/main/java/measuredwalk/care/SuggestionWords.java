package measuredwalk.care;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import measuredwalk.conversations.Phrase;
import measuredwalk.conversations.Replies;
import measuredwalk.household.Dog;
import measuredwalk.journal.Journal;
import measuredwalk.signs.LoadKind;
import measuredwalk.suggestions.Suggestions;
import measuredwalk.tolerance.Advice;
import measuredwalk.tolerance.Reason;
import measuredwalk.tolerance.Suggestion;
import org.springframework.stereotype.Component;

/** Today's suggestion in everyday words, with its reason in one sentence. */
@Component
class SuggestionWords {

	private static final String REASONS = "reasons";

	/** Reasons of how the figure was rounded off, not of how the dog is. */
	private static final Set<Reason> OF_THE_RECKONING = EnumSet.of(Reason.LEAST_WALK, Reason.CLINIC_MINIMUM,
			Reason.CLINIC_MAXIMUM, Reason.SMALL_CHANGE_NOT_MADE);

	/** So many days a harder walk is named among the reasons, as the model has it. */
	private static final int HARDER_DAYS = 3;

	private final Suggestions suggestions;

	private final Replies replies;

	private final Journal journal;

	private final EntryWords entries;

	private final Figures figures;

	SuggestionWords(Suggestions suggestions, Replies replies, Journal journal, EntryWords entries, Figures figures) {
		this.entries = entries;
		this.figures = figures;
		this.suggestions = suggestions;
		this.replies = replies;
		this.journal = journal;
		Arrays.stream(Reason.values()).forEach((reason) -> replies.word(REASONS, reason));
	}

	String today(Dog dog) {
		Suggestion suggestion = this.suggestions.today(dog);
		long taken = this.journal.walks(dog.id())
			.stream()
			.filter((walk) -> walk.facts().date().equals(suggestion.date()))
			.count();
		Map<String, ?> places = Map.of("dog", dog.name(), "walks", this.figures.walks(suggestion.walks()), "minutes",
				this.figures.minutes(suggestion.minutesLow(), suggestion.minutesHigh()), "reason",
				reason(suggestion, dog));
		return this.replies.say(phrase(suggestion, taken > 0), places);
	}

	private static Phrase phrase(Suggestion suggestion, boolean walkedToday) {
		if (suggestion.advice() == Advice.EMERGENCY || suggestion.advice() == Advice.CALL_CLINIC) {
			return Phrase.SUGGESTION_CALL;
		}
		if (suggestion.reasons().stream().anyMatch(SuggestionWords::planOnly)) {
			return Phrase.SUGGESTION_PLAN_ONLY;
		}
		if (suggestion.walks() == 0) {
			return Phrase.SUGGESTION_DONE;
		}
		if (!walkedToday) {
			return Phrase.SUGGESTION_TODAY;
		}
		return (suggestion.walks() == 1) ? Phrase.SUGGESTION_ONE_LEFT : Phrase.SUGGESTION_SOME_LEFT;
	}

	private static boolean planOnly(Reason reason) {
		return reason == Reason.ONLY_THE_PLAN_AFTER_SURGERY || reason == Reason.ONLY_THE_PLAN_WHILE_GROWING;
	}

	/** The most important reason that tells an owner something about the dog. */
	private String reason(Suggestion suggestion, Dog dog) {
		List<Reason> reasons = suggestion.reasons();
		return reasons.stream()
			.filter((reason) -> !OF_THE_RECKONING.contains(reason))
			.findFirst()
			.or(() -> reasons.stream().findFirst())
			.map((reason) -> sentence(reason, dog))
			.orElse("");
	}

	/** All reasons, each in a sentence, the most important first. */
	List<String> reasons(Dog dog) {
		return this.suggestions.today(dog).reasons().stream().map((reason) -> sentence(reason, dog)).toList();
	}

	private String sentence(Reason reason, Dog dog) {
		String words = this.replies.word(REASONS, reason).replace("{dog}", dog.name());
		return (reason == Reason.HARDER_WALK_COUNTS_MORE) ? words.replace("{loads}", recentLoads(dog)) : words;
	}

	/** What made the last days' walks harder. */
	private String recentLoads(Dog dog) {
		LocalDate from = this.suggestions.today(dog).date().minusDays(HARDER_DAYS);
		Set<LoadKind> loads = EnumSet.noneOf(LoadKind.class);
		this.journal.walks(dog.id())
			.stream()
			.filter((walk) -> !walk.facts().date().isBefore(from))
			.forEach((walk) -> loads.addAll(walk.facts().loads()));
		return this.entries.loads(loads);
	}

}
