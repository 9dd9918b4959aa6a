package measuredwalk.conversations;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

import measuredwalk.signs.Coded;
import measuredwalk.speech.Speaking;

/** What the bot says when it does not ask: the words of {@code replies.yaml}. */
public final class Replies {

	private final InEachLanguage<Texts> texts;

	private Replies(InEachLanguage<Texts> texts) {
		this.texts = texts;
	}

	static Replies read(ConversationFiles files) {
		Texts usual = Texts.read(files);
		return new Replies(InEachLanguage.read(files, (own) -> Texts.read(own).sameAs(usual)));
	}

	/**
	 * A phrase with its places filled.
	 * @param phrase the phrase
	 * @param places what stands in each place, such as {@code dog}
	 * @return the text to send
	 */
	public String say(Phrase phrase, Map<String, ?> places) {
		return fill(this.texts.now().phrases().get(phrase), places);
	}

	/**
	 * A phrase without places.
	 * @param phrase the phrase
	 * @return the text to send
	 */
	public String say(Phrase phrase) {
		return say(phrase, Map.of());
	}

	/**
	 * The everyday word for a word of the trade.
	 * @param group which words, such as {@code signs}
	 * @param coded the word of the trade
	 * @return the everyday word
	 * @throws ConversationFileProblem when {@code replies.yaml} has no such word
	 */
	public String word(String group, Coded coded) {
		return word(group, coded.code());
	}

	/**
	 * The everyday word for a code.
	 * @param group which words, such as {@code units}
	 * @param code the code
	 * @return the everyday word
	 * @throws ConversationFileProblem when {@code replies.yaml} has no such word
	 */
	public String word(String group, String code) {
		return Optional.ofNullable(this.texts.now().words().getOrDefault(group, Map.of()).get(code))
			.orElseThrow(() -> new ConversationFileProblem(
					"replies.yaml has no word for '" + code + "' under words: " + group + "; add it."));
	}

	/**
	 * A part of a sentence, put together by {@link java.text.MessageFormat}.
	 * @param part the part
	 * @param filledIn what stands in its places, in order; a number also chooses a plural
	 * @return the words
	 */
	public String part(Part part, Object... filledIn) {
		Texts now = this.texts.now();
		return new MessageFormat(now.parts().get(part), Speaking.now().locale()).format(filledIn);
	}

	/**
	 * The answer to a small word of courtesy.
	 * @param text what was written
	 * @return the answer, or empty when it is no such word
	 */
	public Optional<String> courtesy(String text) {
		String bare = text.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L} ]", "").strip();
		return Optional.ofNullable(this.texts.now().words().getOrDefault(Texts.COURTESIES, Map.of()).get(bare));
	}

	static String fill(String text, Map<String, ?> places) {
		String filled = text;
		for (Map.Entry<String, ?> place : places.entrySet()) {
			filled = filled.replace("{" + place.getKey() + "}", String.valueOf(place.getValue()));
		}
		return filled;
	}

}
