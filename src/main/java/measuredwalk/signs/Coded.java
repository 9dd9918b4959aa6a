package measuredwalk.signs;

import java.util.Arrays;
import java.util.stream.Collectors;

/** A word of the vocabulary with the one spelling used in data, API and docs. */
public interface Coded {

	/**
	 * The word as it stands in data, API and docs, such as {@code hind-limb-dragging}.
	 * @return lower-case words joined by hyphens, never empty
	 */
	default String code() {
		return ((Enum<?>) this).name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
	}

	/**
	 * Finds the word with that spelling.
	 * @param <E> the vocabulary
	 * @param vocabulary the enum to look in
	 * @param code the spelling
	 * @return the word
	 * @throws IllegalArgumentException when there is no such word; the message lists
	 * those there are
	 */
	static <E extends Enum<E> & Coded> E of(Class<E> vocabulary, String code) {
		Object word = CodedWords.BY_CODE.get(vocabulary).get(code);
		if (word == null) {
			throw new IllegalArgumentException("'" + code + "' is not one of "
					+ Arrays.stream(vocabulary.getEnumConstants()).map(Coded::code).collect(Collectors.joining(", ")));
		}
		return vocabulary.cast(word);
	}

}
