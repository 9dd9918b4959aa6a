package measuredwalk.reading.gloss;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The forms of a language's words, as its {@code endings.txt} tells: {@code ar: a as an}
 * says that 'cantar' is also 'canta', 'cantas' and 'cantan'; {@code poder = puede puedo}
 * names forms that go by no rule.
 */
final class Endings {

	private final Map<String, List<String>> endings = new LinkedHashMap<>();

	private final Map<String, List<String>> irregular = new LinkedHashMap<>();

	private final Map<String, String> changes = new LinkedHashMap<>();

	Endings(GlossaryFile file) {
		for (GlossaryFile.Line line : file.lines()) {
			if (line.text().contains("=>")) {
				String[] change = line.text().split("=>", 2);
				this.changes.put(change[0].strip(), change[1].strip());
			}
			else if (line.text().contains("=")) {
				String[] sides = line.text().split("=", 2);
				this.irregular.put(sides[0].strip(), words(sides[1]));
			}
			else if (line.text().contains(":")) {
				String[] sides = line.text().split(":", 2);
				this.endings.put(sides[0].strip(), words(sides[1]));
			}
			else {
				throw line.error("'" + line.text() + "' is no ending",
						"Write 'ar: a as an', 'poder = puede puedo' or 'ar c+e => qu+e'");
			}
		}
	}

	private static List<String> words(String text) {
		return List.of(text.strip().split(" +", -1));
	}

	/**
	 * All forms of a word.
	 * @param word the plain form, without accents
	 * @return the word and its forms
	 */
	Set<String> of(String word) {
		Set<String> forms = new LinkedHashSet<>(List.of(word));
		forms.addAll(this.irregular.getOrDefault(word, List.of()));
		this.endings.keySet().stream().filter(word::endsWith).findFirst().ifPresent((ending) -> {
			String stem = word.substring(0, word.length() - ending.length());
			this.endings.get(ending)
				.forEach((other) -> forms.add(spelled(ending, stem, other.equals("-") ? "" : other)));
		});
		return forms;
	}

	/**
	 * In some words, such as those in 'ar', a stem's last letter may be spelled otherwise
	 * before an ending: 'toque', not 'toce', from 'tocar'.
	 */
	private String spelled(String kind, String stem, String ending) {
		for (Map.Entry<String, String> change : this.changes.entrySet()) {
			String[] condition = change.getKey().split(" ", 2);
			String[] from = condition[1].split("\\+", -1);
			if (kind.equals(condition[0]) && stem.endsWith(from[0]) && ending.startsWith(from[1])) {
				String[] to = change.getValue().split("\\+", -1);
				return stem.substring(0, stem.length() - from[0].length()) + to[0] + to[1]
						+ ending.substring(from[1].length());
			}
		}
		return stem + ending;
	}

}
