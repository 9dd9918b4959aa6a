package measuredwalk.records;

import java.text.MessageFormat;
import java.util.Map;
import java.util.ResourceBundle;
import java.util.stream.Collectors;

import measuredwalk.speech.Speaking;

/** The words of a record, in the language of the dog's household. */
final class RecordTexts {

	private static final String WORDS = "measuredwalk.records.words";

	private RecordTexts() {
	}

	/** Words by their key, with what stands in {@code {0}}, {@code {1}} and so on. */
	static String of(String key, Object... places) {
		return new MessageFormat(words().getString(key), Speaking.now().locale()).format(places);
	}

	/** A kind of medicine in words, or as the clinic wrote it when it has none. */
	static String medicine(String kind) {
		String key = "medicine." + kind;
		return words().containsKey(key) ? words().getString(key) : kind;
	}

	/** Those without places as well, for a page. */
	static Map<String, String> all() {
		return words().keySet().stream().collect(Collectors.toMap((key) -> key, RecordTexts::of));
	}

	private static ResourceBundle words() {
		return ResourceBundle.getBundle(WORDS, Speaking.now().locale(),
				ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));
	}

}
