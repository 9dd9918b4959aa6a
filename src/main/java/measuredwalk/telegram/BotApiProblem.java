package measuredwalk.telegram;

import java.time.Duration;

import org.jspecify.annotations.Nullable;

/** The Bot API did not do what was asked; the message never holds the token. */
class BotApiProblem extends RuntimeException {

	private final Kind kind;

	private final Duration retryAfter;

	private final @Nullable String movedTo;

	BotApiProblem(Kind kind, Duration retryAfter, String message) {
		this(kind, retryAfter, message, null);
	}

	BotApiProblem(Kind kind, Duration retryAfter, String message, @Nullable String movedTo) {
		super(message);
		this.movedTo = movedTo;
		this.kind = kind;
		this.retryAfter = retryAfter;
	}

	/** The address that the group has moved to, or null. */
	@Nullable String movedTo() {
		return this.movedTo;
	}

	/** What went wrong, by the answer's error code. */
	enum Kind {

		/** 429: too much, with a time to wait. */
		TOO_MUCH,
		/** 403: the person blocked the bot, or the group put it out. */
		CHAT_GONE,
		/** 400 and the like: the request can never succeed. */
		REFUSED,
		/** 401 and 404: the token is wrong. */
		WRONG_TOKEN,
		/** 409: another program takes the updates, or a webhook is set. */
		CONFLICT,
		/** 5xx, an answer that makes no sense, or no answer at all. */
		OUT_OF_ORDER;

		static Kind of(int errorCode) {
			return switch (errorCode) {
				case 429 -> TOO_MUCH;
				case 403 -> CHAT_GONE;
				case 401, 404 -> WRONG_TOKEN;
				case 409 -> CONFLICT;
				default -> (errorCode >= 400 && errorCode < 500) ? REFUSED : OUT_OF_ORDER;
			};
		}

	}

	Kind kind() {
		return this.kind;
	}

	/** How long to wait; zero when the answer did not say. */
	Duration retryAfter() {
		return this.retryAfter;
	}

}
