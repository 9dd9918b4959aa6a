package measuredwalk.reading.lexicon;

import java.util.List;

/**
 * A rule that combines concepts, such as a mouth and a pale colour, into a sign.
 *
 * @param entry the sign that it tells
 * @param concepts names of the concepts, each of which must be there
 * @param unless names of concepts any of which in the same sentence takes it back
 * @param span how many words the whole may cover
 * @param ordered whether the concepts must come in this order
 * @param across whether the whole may reach over the end of a sentence
 */
public record ConceptRule(Entry entry, List<String> concepts, List<String> unless, int span, boolean ordered,
		boolean across) {

	public ConceptRule {
		concepts = List.copyOf(concepts);
		unless = List.copyOf(unless);
	}

}
