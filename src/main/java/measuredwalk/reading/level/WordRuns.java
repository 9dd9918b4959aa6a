package measuredwalk.reading.level;

import java.util.Arrays;
import java.util.Locale;

import measuredwalk.reading.context.Annotation;
import measuredwalk.reading.lexicon.WordClass;
import measuredwalk.reading.words.Words;
import org.jspecify.annotations.Nullable;

/**
 * A message as the set of its words and of the runs of two and three words that stand in
 * one sentence. Each run is a number, so that a message is looked through without making
 * texts of its parts; two different runs share one about once in 10^9.
 */
final class WordRuns {

	/** The most words of a run. */
	static final int LONGEST = 3;

	private static final long MULTIPLIER = 0x9E3779B97F4A7C15L;

	private WordRuns() {
	}

	/**
	 * The runs of a message.
	 * @param annotation the message
	 * @param dogName the dog's name, or null
	 * @return the number of each run, once, in rising order
	 */
	static long[] of(Annotation annotation, @Nullable String dogName) {
		Words words = annotation.words();
		String[] general = general(annotation, dogName);
		long[] runs = new long[general.length * LONGEST];
		int size = 0;
		for (int from = 0; from < general.length; from++) {
			long run = 0;
			for (int at = from; at < Math.min(general.length, from + LONGEST); at++) {
				if (at > from && words.isSentenceBefore(at)) {
					break;
				}
				run = longer(run, general[at]);
				runs[size++] = run;
			}
		}
		return distinct(runs, size);
	}

	/**
	 * The number of a run that is written out.
	 * @param run its words, parted by a blank
	 * @return its number
	 */
	static long of(String run) {
		long number = 0;
		for (String word : run.split(" ")) {
			number = longer(number, word);
		}
		return number;
	}

	private static long longer(long run, String word) {
		long mixed = (run + word.hashCode() + 1) * MULTIPLIER;
		return mixed ^ (mixed >>> 29);
	}

	private static long[] distinct(long[] runs, int size) {
		Arrays.sort(runs, 0, size);
		int kept = 0;
		for (int at = 0; at < size; at++) {
			if (at == 0 || runs[at] != runs[at - 1]) {
				runs[kept++] = runs[at];
			}
		}
		return Arrays.copyOf(runs, kept);
	}

	/**
	 * The words of a message as they count: figures as any figure, the dog's name as any
	 * name, and words behind a denial in its clause as others than those that are not
	 * denied.
	 */
	static String[] general(Annotation annotation, @Nullable String dogName) {
		String name = (dogName != null) ? dogName.toLowerCase(Locale.ROOT) : "";
		Words words = annotation.words();
		String[] general = new String[words.size()];
		boolean denied = false;
		for (int at = 0; at < general.length; at++) {
			denied = at > 0 && annotation.clauses().of(at) == annotation.clauses().of(at - 1)
					&& (denied || annotation.is(at - 1, WordClass.DENIAL));
			general[at] = (denied ? "~" : "") + general(words.form(at), name);
		}
		return general;
	}

	private static String general(String form, String name) {
		if (Character.isDigit(form.charAt(0))) {
			return "#";
		}
		return form.equals(name) ? "<dog>" : form;
	}

}
