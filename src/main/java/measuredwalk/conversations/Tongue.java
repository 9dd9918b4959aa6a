package measuredwalk.conversations;

import java.util.List;

import measuredwalk.speech.Speech;
import measuredwalk.speech.Units;
import org.jspecify.annotations.Nullable;

/**
 * A language with its words, from which a household can choose.
 *
 * @param tag its tag, such as {@code en-US}
 * @param name what it calls itself; stands on a button
 * @param folder the folder of its own files, or null when it has none
 * @param words the file of words that are said otherwise, or null
 * @param vet the file of words for those who say vet and not clinic, or null
 * @param units the units that go with it
 * @param called plain words that mean it, lower case
 */
public record Tongue(String tag, String name, @Nullable String folder, @Nullable String words, @Nullable String vet,
		Units units, List<String> called) {

	public Tongue {
		called = List.copyOf(called);
	}

	/**
	 * How somebody is spoken to who chose this language and nothing else.
	 * @return the speech
	 */
	public Speech speech() {
		return Speech.usual().inLanguage(this.tag, this.units);
	}

}
