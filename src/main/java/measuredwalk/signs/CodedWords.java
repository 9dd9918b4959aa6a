package measuredwalk.signs;

import java.util.HashMap;
import java.util.Map;

/**
 * The words of each vocabulary by their spelling, spelled out once for each vocabulary.
 */
final class CodedWords {

	static final ClassValue<Map<String, Object>> BY_CODE = new ClassValue<>() {

		@Override
		protected Map<String, Object> computeValue(Class<?> vocabulary) {
			Map<String, Object> words = new HashMap<>();
			for (Object word : vocabulary.getEnumConstants()) {
				words.put(((Coded) word).code(), word);
			}
			return Map.copyOf(words);
		}

	};

	private CodedWords() {
	}

}
