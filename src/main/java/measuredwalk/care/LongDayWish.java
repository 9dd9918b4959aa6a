package measuredwalk.care;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import measuredwalk.reading.Token;
import measuredwalk.reading.Tokeniser;
import measuredwalk.reading.quantity.Duration;
import measuredwalk.reading.quantity.Quantities;
import org.jspecify.annotations.Nullable;

/**
 * 'We have visitors on Saturday and will walk longer': a longer day that is still to
 * come. What was walked already is never taken for a wish.
 *
 * @param day the day
 * @param minutes minutes of the long walk, or null when they were not said
 * @param sentence the sentence that says so
 * @param rest what else the message says, possibly empty
 */
record LongDayWish(LocalDate day, @Nullable Double minutes, String sentence, String rest) {

	private static final Pattern SENTENCE_END = Pattern.compile("(?<=[.!?\\n])\\s+");

	private static final Pattern PLAN = Pattern
		.compile("\\b(plan|plans|planned|planning|visitors?|guests?|family|friends"
				+ "|holidays?|will|we'll|i'll|going to|want to|would like to|hop(e|ing) to|thinking of"
				+ "|(can|could|may|shall) we)\\b");

	private static final Pattern LONGER = Pattern
		.compile("\\b(longer|(long|big|bigger|extra|proper) (day|walks?|hike|ramble|outing)|hike|hiking|walk more"
				+ "|more walking)\\b");

	private static final Pattern WALKED = Pattern.compile(
			"\\b(did|was|were|came|turned|walked|went|had|managed|stopped" + "|gave|got|took|yesterday|last|ago)\\b");

	private static final Pattern DAY = Pattern.compile(
			"\\b((?:day after )?tomorrow|(?:mon|tues|wednes|thurs|fri|satur|sun)day|week-?end|this (?:afternoon|evening)|tonight)\\b");

	private static final double LONGEST_MINUTES = 600;

	private static final double SECONDS_IN_MINUTE = 60;

	private static final int LETTERS_THAT_TELL = 3;

	/**
	 * Looks for a wish.
	 * @param english puts a sentence into the English that its words are looked for in
	 */
	static Optional<LongDayWish> in(String text, LocalDateTime now, UnaryOperator<String> english) {
		List<String> sentences = List.of(SENTENCE_END.split(text.strip()));
		for (int at = 0; at < sentences.size(); at++) {
			String said = english.apply(sentences.get(at)).toLowerCase(Locale.ROOT).replace('\u2019', '\'');
			Matcher day = DAY.matcher(said);
			if (PLAN.matcher(said).find() && LONGER.matcher(said).find() && !WALKED.matcher(said).find()
					&& day.find()) {
				List<String> others = new ArrayList<>(sentences);
				others.remove(at);
				return Optional.of(new LongDayWish(day(day.group(1), now.toLocalDate()), minutes(said, now),
						sentences.get(at), String.join(" ", others)));
			}
		}
		return Optional.empty();
	}

	/** A day of the week is the next one of that name. */
	private static LocalDate day(String word, LocalDate today) {
		if (word.equals("tomorrow")) {
			return today.plusDays(1);
		}
		if (word.endsWith("tomorrow")) {
			return today.plusDays(2);
		}
		if (word.startsWith("week")) {
			return today.with(TemporalAdjusters.next(DayOfWeek.SATURDAY));
		}
		for (DayOfWeek day : DayOfWeek.values()) {
			if (word.endsWith("day") && day.name().regionMatches(true, 0, word, 0, LETTERS_THAT_TELL)) {
				return today.with(TemporalAdjusters.next(day));
			}
		}
		return today;
	}

	private static @Nullable Double minutes(String said, LocalDateTime now) {
		List<Token> tokens = Tokeniser.tokens(said);
		return Quantities.in(tokens, now)
			.stream()
			.filter(Duration.class::isInstance)
			.map((quantity) -> ((Duration) quantity).seconds().value() / SECONDS_IN_MINUTE)
			.filter((minutes) -> minutes >= 1 && minutes <= LONGEST_MINUTES)
			.findFirst()
			.orElse(null);
	}

}
