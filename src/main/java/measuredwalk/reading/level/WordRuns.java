package measuredwalk.reading.level;

import java.util.HashSet;
import java.util.Set;

import measuredwalk.reading.words.Words;
import org.jspecify.annotations.Nullable;

/**
 * A message as the set of its words and of the runs of two and three words that stand in
 * one sentence.
 */
final class WordRuns {

	private static final int LONGEST = 3;

	private WordRuns() {
	}

	/**
	 * The runs of a message. Figures count as any figure, the dog's name as any name.
	 * @param words the message
	 * @param dogName the dog's name, or null
	 * @return each run once, its words parted by a blank
	 */
	static Set<String> of(Words words, @Nullable String dogName) {
		String name = (dogName != null) ? dogName.toLowerCase(java.util.Locale.ROOT) : "";
		Set<String> runs = new HashSet<>();
		StringBuilder run = new StringBuilder();
		for (int from = 0; from < words.size(); from++) {
			run.setLength(0);
			for (int at = from; at < Math.min(words.size(), from + LONGEST); at++) {
				if (at > from && words.isSentenceBefore(at)) {
					break;
				}
				run.append((at > from) ? " " : "").append(general(words.form(at), name));
				runs.add(run.toString());
			}
		}
		return runs;
	}

	private static String general(String form, String name) {
		if (Character.isDigit(form.charAt(0))) {
			return "#";
		}
		return form.equals(name) ? "<dog>" : form;
	}

}
