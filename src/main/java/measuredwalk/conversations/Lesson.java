package measuredwalk.conversations;

import java.util.Locale;

import measuredwalk.signs.SignKind;

/**
 * How to see a sign, in three short lines.
 *
 * @param sign the sign
 * @param title what stands on its button
 * @param how what to look or listen for
 * @param where from where to look
 * @param when when to tell of it
 * @param drawing what its drawing shows, in words
 */
public record Lesson(SignKind sign, String title, String how, String where, String when, String drawing) {

	/**
	 * The lesson as it is sent.
	 * @return three lines
	 */
	public String text() {
		return String.join("\n", this.how, this.where, this.when);
	}

	boolean titled(String words) {
		return this.title.equalsIgnoreCase(words.strip());
	}

	boolean about(String words) {
		return !words.isBlank() && this.title.toLowerCase(Locale.ROOT).contains(words.strip().toLowerCase(Locale.ROOT));
	}

}
