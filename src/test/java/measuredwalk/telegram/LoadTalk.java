package measuredwalk.telegram;

import java.util.List;

/**
 * What one owner says in a day: after a walk, the answer to what is asked about it, the
 * next morning's news, a second walk, a correction and two commands.
 */
final class LoadTalk {

	private static final List<String> DAY = List.of(
			"%d mins round the field, slowed up after about %d and a bit stiff on the back left", "same as usual",
			"/today", "Morning! He was stiff for about ten minutes getting up, then fine", "no, nothing",
			"%d minutes to the shops this afternoon, no signs at all", "about the same as usual", "no, %d not %d",
			"/why", "thanks");

	private LoadTalk() {
	}

	static int length() {
		return DAY.size();
	}

	/** What the owner of a chat says next, when so much was said already. */
	static String text(long chat, int said) {
		long minutes = 15 + chat % 14;
		return switch (said) {
			case 0 -> DAY.get(said).formatted(minutes, minutes - 8);
			case 5 -> DAY.get(said).formatted(minutes + 3);
			case 7 -> DAY.get(said).formatted(minutes - 2, minutes + 3);
			default -> DAY.get(said);
		};
	}

}
