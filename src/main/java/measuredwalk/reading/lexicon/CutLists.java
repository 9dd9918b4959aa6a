package measuredwalk.reading.lexicon;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.jspecify.annotations.Nullable;

/**
 * Finds lists that a blank has cut in two: {@code get up| stand} and
 * {@code can not|could not|unable} are not the lists that they look like, since without
 * brackets a blank ends a list.
 */
final class CutLists {

	private CutLists() {
	}

	/**
	 * What is wrong with the lists of a phrase.
	 * @param phrase a phrase as it is written in a lexicon file
	 * @return the fault, or null when there is none
	 */
	static @Nullable String faultOf(String phrase) {
		if (phrase.startsWith("|") || phrase.endsWith("|") || phrase.contains("| ") || phrase.contains(" |")
				|| phrase.contains("||")) {
			return "a blank stands beside a | of '" + phrase + "' and ends its list";
		}
		List<String> parts = Phrase.parts(phrase);
		for (int at = 1; at < parts.size(); at++) {
			String twice = sharedWord(parts.get(at - 1), parts.get(at));
			if (twice != null) {
				return "'" + twice + "' is in two lists of '" + phrase + "' that stand side by side, so that a blank"
						+ " seems to have cut one in two";
			}
		}
		return null;
	}

	private static @Nullable String sharedWord(String one, String next) {
		if (!isBareList(one) || !isBareList(next)) {
			return null;
		}
		Set<String> shared = new HashSet<>(words(one));
		shared.retainAll(words(next));
		return shared.isEmpty() ? null : shared.iterator().next();
	}

	private static boolean isBareList(String part) {
		return part.contains("|") && !part.startsWith("(");
	}

	private static List<String> words(String list) {
		return List.of(list.replace("?", "").split("\\|", -1));
	}

}
