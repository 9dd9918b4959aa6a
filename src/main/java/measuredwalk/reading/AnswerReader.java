package measuredwalk.reading;

import java.util.List;

import measuredwalk.reading.context.Annotation;
import measuredwalk.reading.lexicon.Category;
import measuredwalk.reading.lexicon.Mention;
import org.jspecify.annotations.Nullable;

/** Reads a bare yes or no. */
final class AnswerReader {

	/** A longer message says more than yes or no. */
	private static final int MOST_WORDS = 12;

	private AnswerReader() {
	}

	static @Nullable Answer read(Annotation annotation) {
		if (annotation.words().size() > MOST_WORDS) {
			return null;
		}
		List<Mention> answers = annotation.mentions(Category.ANSWER);
		for (String value : List.of("unsure", "no", "yes")) {
			if (answers.stream().anyMatch((mention) -> mention.value().equals(value))) {
				return Answer.valueOf(value.toUpperCase(java.util.Locale.ROOT));
			}
		}
		return null;
	}

}
