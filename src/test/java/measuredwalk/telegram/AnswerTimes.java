package measuredwalk.telegram;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * How long people waited for the first word of an answer: from the moment that their
 * message lay ready at the stand-in until a message to their chat reached it. A chat that
 * asks again before it was answered is counted from its first question on.
 */
final class AnswerTimes {

	private final long[] nanos;

	AnswerTimes(List<Asked> asked, List<StandInMessage> sent) {
		Map<Long, List<Long>> answers = new HashMap<>();
		sent.forEach((each) -> answers.computeIfAbsent(each.chatId(), (chat) -> new ArrayList<>()).add(each.nanos()));
		this.nanos = asked.stream()
			.mapToLong((each) -> wait(each, answers.getOrDefault(each.chat(), List.of())))
			.filter((wait) -> wait >= 0)
			.sorted()
			.toArray();
	}

	private static long wait(Asked asked, List<Long> answers) {
		return answers.stream().mapToLong((at) -> at - asked.nanos()).filter((wait) -> wait > 0).findFirst().orElse(-1);
	}

	int answered() {
		return this.nanos.length;
	}

	/** The wait that this part of the people do not exceed, in milliseconds. */
	double millis(double part) {
		return this.nanos[(int) Math.min(this.nanos.length - 1, Math.round(part * this.nanos.length))] / 1e6;
	}

	String words() {
		if (this.nanos.length == 0) {
			return "nobody was answered";
		}
		return String.format(Locale.ROOT,
				"%d answered; first words after %.0f ms (median), %.0f ms (95 %%), %.0f ms (99 %%), %.0f ms at most",
				answered(), millis(0.5), millis(0.95), millis(0.99), Arrays.stream(this.nanos).max().orElse(0) / 1e6);
	}

	/**
	 * Something that somebody said.
	 *
	 * @param chat their chat
	 * @param nanos when it lay ready, on the machine's own clock
	 */
	record Asked(long chat, long nanos) {
	}

}
