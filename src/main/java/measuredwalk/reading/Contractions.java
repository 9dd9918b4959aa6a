package measuredwalk.reading;

import java.util.HashMap;
import java.util.Map;

/**
 * Puts back the apostrophes that people leave out on a phone. Only forms that are no
 * other English word: not "well", "were", "ill", "shell", "id".
 */
final class Contractions {

	private static final String[] FORMS = { "ain't", "aren't", "can't", "couldn't", "didn't", "doesn't", "don't",
			"hadn't", "hasn't", "haven't", "isn't", "mightn't", "mustn't", "needn't", "shouldn't", "wasn't", "weren't",
			"won't", "wouldn't", "he's", "she's", "that's", "there's", "what's", "i'm", "i've", "you're", "you've",
			"they're", "they've", "we've", "o'clock" };

	private static final Map<String, String> BY_BARE_FORM = byBareForm();

	private Contractions() {
	}

	static String restored(String word) {
		return BY_BARE_FORM.getOrDefault(word, word);
	}

	private static Map<String, String> byBareForm() {
		Map<String, String> forms = new HashMap<>();
		for (String form : FORMS) {
			forms.put(form.replace("'", ""), form);
		}
		return forms;
	}

}
