package measuredwalk.telegram;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a button carries: not the answer itself, which may be too long for the 64 bytes
 * that the Bot API allows, but where it stands in the outbox.
 *
 * @param outboxId the message that offered the choice
 * @param index the choice's place in it, from 0
 */
record ButtonData(long outboxId, int index) {

	private static final Pattern FORM = Pattern.compile("c:(\\d{1,18}):(\\d{1,3})");

	static Optional<ButtonData> parse(String data) {
		Matcher matcher = FORM.matcher(data);
		return matcher.matches()
				? Optional.of(new ButtonData(Long.parseLong(matcher.group(1)), Integer.parseInt(matcher.group(2))))
				: Optional.empty();
	}

	String text() {
		return "c:" + this.outboxId + ":" + this.index;
	}

}
