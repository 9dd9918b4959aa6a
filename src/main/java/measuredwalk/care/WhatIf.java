package measuredwalk.care;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

import measuredwalk.conversations.Part;
import measuredwalk.conversations.Phrase;
import measuredwalk.conversations.Replies;
import measuredwalk.reading.Token;
import measuredwalk.reading.Tokeniser;
import measuredwalk.reading.quantity.BareNumber;
import measuredwalk.reading.quantity.Dose;
import measuredwalk.reading.quantity.Duration;
import measuredwalk.reading.quantity.Quantities;
import measuredwalk.reading.quantity.Quantity;
import measuredwalk.suggestions.Suggestions;
import measuredwalk.tolerance.Suggestion;
import org.springframework.stereotype.Component;

/**
 * 'Could we do 30 today?': the chance of that being too much, from the belief of today.
 */
@Component
class WhatIf {

	private static final Set<String> MAY = Set.of("can", "could", "may", "shall", "should", "ok", "okay", "alright",
			"try");

	private static final Set<String> WALKING = Set.of("walk", "walks", "do", "go", "out", "try", "manage", "stretch",
			"longer");

	private static final double LONGEST_MINUTES = 180;

	private static final double SECONDS_IN_MINUTE = 60;

	private final Suggestions suggestions;

	private final Replies replies;

	private final Figures figures;

	WhatIf(Suggestions suggestions, Replies replies, Figures figures) {
		this.replies = replies;
		this.figures = figures;
		this.suggestions = suggestions;
	}

	boolean asks(Turn turn) {
		return minutes(turn).isPresent();
	}

	/** Answers, if the message asks whether a walk of some minutes may be. */
	boolean answered(Turn turn, Reply reply) {
		OptionalDouble asked = minutes(turn);
		if (asked.isEmpty()) {
			return false;
		}
		Suggestion today = this.suggestions.today(turn.dog());
		double chance = this.suggestions.chanceOfTrouble(turn.dog(), asked.getAsDouble());
		boolean within = today.walks() > 0 && asked.getAsDouble() <= today.minutesHigh();
		reply.say(within ? Phrase.WHAT_IF_WITHIN : Phrase.WHAT_IF_TOO_MUCH,
				Map.of("dog", turn.dog().name(), "minutes", this.figures.minutes(asked.getAsDouble()), "chance",
						chance(chance), "range", this.figures.minutes(today.minutesLow(), today.minutesHigh())));
		return true;
	}

	/** In tens of a hundred, as people say it. */
	String chance(double chance) {
		long inTwenty = Math.round(chance * 20);
		if (inTwenty == 0) {
			return this.replies.part(Part.CHANCE_SMALL);
		}
		return (inTwenty >= 20) ? this.replies.part(Part.CHANCE_LARGE) : this.replies.part(Part.CHANCE, inTwenty);
	}

	private static OptionalDouble minutes(Turn turn) {
		List<Token> tokens = Tokeniser.tokens(turn.english());
		List<String> words = tokens.stream().map(Token::word).toList();
		boolean asks = turn.text().indexOf('?') >= 0 && words.stream().anyMatch(MAY::contains)
				&& words.stream().anyMatch(WALKING::contains);
		if (!asks) {
			return OptionalDouble.empty();
		}
		List<Quantity> quantities = Quantities.in(tokens, turn.time());
		boolean medicine = quantities.stream().anyMatch(Dose.class::isInstance);
		Optional<Double> first = medicine ? Optional.empty()
				: quantities.stream().map(WhatIf::minutes).flatMap(Optional::stream).findFirst();
		return first.map(OptionalDouble::of).orElse(OptionalDouble.empty());
	}

	private static Optional<Double> minutes(Quantity quantity) {
		if (quantity instanceof Duration duration) {
			return plausible(duration.seconds().value() / SECONDS_IN_MINUTE);
		}
		return (quantity instanceof BareNumber number) ? plausible(number.amount().value()) : Optional.empty();
	}

	private static Optional<Double> plausible(double minutes) {
		return (minutes >= 1 && minutes <= LONGEST_MINUTES) ? Optional.of(minutes) : Optional.empty();
	}

}
