package measuredwalk.telegram;

import java.time.Duration;

import org.springframework.stereotype.Component;

/** How long to wait after fetching failed, and what to say about it. */
@Component
@WithToken
class PollTroubles {

	private static final Duration SHORTEST_PAUSE = Duration.ofMillis(500);

	private static final Duration LONGEST_PAUSE = Duration.ofSeconds(30);

	private static final int MOST_DOUBLINGS = 6;

	private final PollHealth health;

	private final Introduction introduction;

	private int failures;

	PollTroubles(PollHealth health, Introduction introduction) {
		this.health = health;
		this.introduction = introduction;
	}

	void none() {
		this.failures = 0;
		this.health.well();
	}

	Duration after(BotApiProblem problem) {
		this.health.troubled(words(problem));
		if (problem.kind() == BotApiProblem.Kind.CONFLICT) {
			this.introduction.again();
		}
		Duration pause = growing();
		return (problem.retryAfter().compareTo(pause) > 0) ? problem.retryAfter() : pause;
	}

	Duration afterOwnFault() {
		this.health.troubled("They cannot be stored at the moment.");
		return growing();
	}

	private Duration growing() {
		Duration pause = SHORTEST_PAUSE.multipliedBy(1L << Math.min(this.failures, MOST_DOUBLINGS));
		this.failures++;
		return (pause.compareTo(LONGEST_PAUSE) < 0) ? pause : LONGEST_PAUSE;
	}

	private static String words(BotApiProblem problem) {
		return switch (problem.kind()) {
			case WRONG_TOKEN -> "the Bot API does not know the token. Check measuredwalk.telegram.token.";
			case CONFLICT -> "another program takes this bot's updates, or a webhook is set for it. Stop the other"
					+ " one, or give each its own bot.";
			case TOO_MUCH -> "the Bot API asks us to wait.";
			case REFUSED, CHAT_GONE -> "the Bot API refuses: " + problem.getMessage();
			case OUT_OF_ORDER -> "the Bot API cannot be reached or is out of order.";
		};
	}

}
