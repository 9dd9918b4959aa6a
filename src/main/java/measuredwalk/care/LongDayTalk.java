package measuredwalk.care;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;

import measuredwalk.conversations.Phrase;
import measuredwalk.conversations.Replies;
import measuredwalk.escalation.AlertLevel;
import measuredwalk.escalation.AlertStatus;
import measuredwalk.escalation.Alerts;
import measuredwalk.reading.Reading;
import measuredwalk.suggestions.Suggestions;
import measuredwalk.tolerance.LongDay;
import measuredwalk.tolerance.LongDay.PlannedDay;
import measuredwalk.tolerance.LongDay.Why;
import measuredwalk.tolerance.Suggestion;
import org.springframework.stereotype.Component;

/**
 * Answers a wish for a longer day with how to spread it. Nothing is stored and nothing
 * raised: that morning's suggestion goes first.
 */
@Component
class LongDayTalk {

	/** Without minutes: as much more as a day may ever be. */
	private static final double OPEN_WISH = 1.5;

	private final Suggestions suggestions;

	private final SuggestionWords words;

	private final Ears ears;

	private final Replies replies;

	private final Alerts alerts;

	private final Figures figures;

	private final WhatIf whatIf;

	LongDayTalk(Suggestions suggestions, SuggestionWords words, Ears ears, Replies replies, Alerts alerts,
			Figures figures, WhatIf whatIf) {
		this.figures = figures;
		this.whatIf = whatIf;
		this.alerts = alerts;
		this.suggestions = suggestions;
		this.words = words;
		this.ears = ears;
		this.replies = replies;
	}

	/**
	 * The wish of a message. One that tells of a sign in the same breath is heard for the
	 * sign.
	 */
	Optional<LongDayWish> wish(Turn turn) {
		UnaryOperator<String> english = (text) -> Ears.english(text, turn.speech(), turn.allNames());
		return LongDayWish.in(turn.text(), turn.time(), english).filter((wish) -> {
			Reading sentence = this.ears.read(turn.saying(wish.sentence()), null);
			return sentence.signs().isEmpty();
		});
	}

	void answer(Turn turn, LongDayWish wish, Reply reply) {
		Suggestion today = this.suggestions.today(turn.dog());
		LongDay planned = this.suggestions.longDay(turn.dog(), wish.day(), wanted(wish, today));
		if (planned.reasons().contains(Why.NOT_NOW) || isWaitedFor(turn)) {
			reply.say(Phrase.LONG_DAY_NOT_NOW, Map.of("dog", turn.dog().name()));
			reply.say(turn.named(this.words.today(turn.dog())));
		}
		else if (planned.reasons().contains(Why.NO_MORE_THAN_USUAL)) {
			reply.say(Phrase.LONG_DAY_AS_USUAL, Map.of("dog", turn.dog().name(), "day", day(wish, turn.today())));
		}
		else {
			reply.say(Phrase.LONG_DAY, Map.of("dog", turn.dog().name(), "day", day(wish, turn.today()), "plan",
					dose(on(planned, wish.day())), "more", more(turn, wish, planned)));
		}
	}

	/**
	 * The clinic has been told of something that cannot wait, and it is not done with.
	 */
	private boolean isWaitedFor(Turn turn) {
		return this.alerts.of(turn.dog().id())
			.stream()
			.anyMatch((alert) -> alert.level() != AlertLevel.REVIEW && alert.status() != AlertStatus.CLOSED);
	}

	/** One long walk in the place of one of the usual ones. */
	private static double wanted(LongDayWish wish, Suggestion today) {
		double usual = Math.max(1, today.walks()) * today.minutes();
		return (wish.minutes() != null) ? wish.minutes() + usual - today.minutes() : OPEN_WISH * usual;
	}

	private String day(LongDayWish wish, LocalDate today) {
		return this.figures.dayToCome(wish.day(), today);
	}

	private static PlannedDay on(LongDay planned, LocalDate day) {
		return planned.days().stream().filter((each) -> each.date().equals(day)).findFirst().orElseThrow();
	}

	private String dose(PlannedDay day) {
		return this.figures.walksOf(day.walks(), day.minutes());
	}

	private String more(Turn turn, LongDayWish wish, LongDay planned) {
		return (around(planned, wish.day()) + " " + chance(turn, wish, on(planned, wish.day()))).strip();
	}

	private String around(LongDay planned, LocalDate day) {
		return planned.days()
			.stream()
			.filter((each) -> !each.date().equals(day))
			.findFirst()
			.map((each) -> this.replies.say(Phrase.LONG_DAY_AROUND, Map.of("plan", dose(each))))
			.orElse("");
	}

	private String chance(Turn turn, LongDayWish wish, PlannedDay planned) {
		Double minutes = wish.minutes();
		boolean atOnce = minutes != null && minutes > planned.minutes();
		double chance = this.suggestions.chanceOfTrouble(turn.dog(), atOnce ? minutes : planned.minutes());
		return this.replies.say(atOnce ? Phrase.LONG_DAY_CHANCE_AT_ONCE : Phrase.LONG_DAY_CHANCE, Map.of("asked",
				this.figures.minutes(atOnce ? minutes : planned.minutes()), "chance", this.whatIf.chance(chance)));
	}

}
