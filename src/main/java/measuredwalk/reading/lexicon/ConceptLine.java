package measuredwalk.reading.lexicon;

import java.util.List;
import java.util.Set;

/**
 * Reads a line of a lexicon file that combines concepts, such as
 * {@code within 8: mouth pale unless berry}: all of them within so many words of one
 * sentence, in any order; {@code then} asks for that order, {@code across} lets a
 * sentence end between them.
 */
final class ConceptLine {

	private static final Set<String> WORDS = Set.of("within", "then", "across");

	/** Makes the error that names the file and the line. */
	@FunctionalInterface
	interface Fault {

		LexiconError of(String what, String fix);

	}

	private ConceptLine() {
	}

	static boolean is(String line) {
		return line.indexOf(':') > 0 && WORDS.contains(line.substring(0, Math.max(0, line.indexOf(' '))));
	}

	static ConceptRule rule(String line, Entry entry, Fault fault) {
		String[] head = line.substring(0, line.indexOf(':')).split(" +", -1);
		if (head.length != 2 || !head[1].chars().allMatch(Character::isDigit)) {
			throw fault.of("the rule '" + line + "' has no distance", "Write it as 'within 8: concept concept'");
		}
		String[] parts = line.substring(line.indexOf(':') + 1).split(" unless ", -1);
		return new ConceptRule(entry, names(parts[0]), (parts.length > 1) ? names(parts[1]) : List.of(),
				Integer.parseInt(head[1]), head[0].equals("then"), head[0].equals("across"));
	}

	private static List<String> names(String text) {
		return List.of(text.strip().split(" +", -1));
	}

}
