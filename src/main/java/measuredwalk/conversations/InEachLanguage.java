package measuredwalk.conversations;

import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;

import measuredwalk.speech.Speaking;
import measuredwalk.speech.Speech;

/**
 * The same thing in every language; what is taken is in the language of whoever is spoken
 * to.
 *
 * @param <T> what it is
 */
final class InEachLanguage<T> {

	private final Map<String, T> byName = new HashMap<>();

	private final T usual;

	private InEachLanguage(T usual) {
		this.usual = usual;
	}

	/**
	 * Reads it in every language that the files have, each with both words for a clinic.
	 */
	static <T> InEachLanguage<T> read(ConversationFiles files, Function<ConversationFiles, T> reader) {
		Tongues tongues = Tongues.read(files);
		InEachLanguage<T> all = new InEachLanguage<>(reader.apply(files));
		for (Tongue tongue : tongues.all()) {
			all.byName.put(name(tongue.tag(), false), reader.apply(files.in(tongue, false)));
			all.byName.put(name(tongue.tag(), true), reader.apply(files.in(tongue, true)));
		}
		return all;
	}

	static <T> InEachLanguage<T> only(T thing) {
		return new InEachLanguage<>(thing);
	}

	private static String name(String tag, boolean vet) {
		return tag + (vet ? "+vet" : "");
	}

	T now() {
		Speech speech = Speaking.now();
		return Objects.requireNonNullElse(this.byName.get(name(speech.tag(), speech.vet())), this.usual);
	}

}
