package measuredwalk.reading.level;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import measuredwalk.reading.context.Annotation;
import measuredwalk.reading.lexicon.Category;
import measuredwalk.reading.lexicon.ConceptRule;
import measuredwalk.reading.lexicon.Entry;
import measuredwalk.reading.lexicon.Lexicon;
import measuredwalk.reading.lexicon.Mention;

/**
 * Finds signs by what is meant and not by a phrase: ideas that together tell of one, such
 * as a mouth and a pale colour, each in any of its many wordings. A message's concepts
 * are gone through once.
 */
public final class ConceptScreen {

	private final Map<String, List<Slot>> byConcept = new HashMap<>();

	private final Set<String> takingBack = new HashSet<>();

	private final int rules;

	/** A place in a rule that a concept can fill. */
	record Slot(int rule, ConceptRule what, int place) {
	}

	/**
	 * A screen with the rules of a lexicon.
	 * @param lexicon the lexicon
	 * @throws IllegalStateException when a rule names a concept that has no words
	 */
	public ConceptScreen(Lexicon lexicon) {
		List<ConceptRule> all = lexicon.conceptRules();
		this.rules = all.size();
		Set<String> known = new HashSet<>();
		lexicon.entries()
			.stream()
			.filter((entry) -> entry.category() == Category.CONCEPT)
			.map(Entry::value)
			.forEach(known::add);
		for (int rule = 0; rule < this.rules; rule++) {
			List<String> concepts = all.get(rule).concepts();
			check(known, concepts);
			check(known, all.get(rule).unless());
			this.takingBack.addAll(all.get(rule).unless());
			for (int place = 0; place < concepts.size(); place++) {
				this.byConcept.computeIfAbsent(concepts.get(place), (name) -> new ArrayList<>())
					.add(new Slot(rule, all.get(rule), place));
			}
		}
	}

	private static void check(Set<String> known, List<String> concepts) {
		for (String concept : concepts) {
			if (!known.contains(concept)) {
				throw new IllegalStateException("A rule names the concept '" + concept
						+ "', which has no words. Add them under [concept " + concept + "]");
			}
		}
	}

	/**
	 * The signs that the concepts tell of, whatever their context.
	 * @param annotation the message's phrases
	 * @return one mention for each time that a rule fits, over the words that made it fit
	 */
	public List<Mention> mentions(Annotation annotation) {
		ConceptMatch[] open = new ConceptMatch[this.rules];
		List<Mention> found = new ArrayList<>();
		List<Mention> against = annotation.concepts()
			.stream()
			.filter((mention) -> this.takingBack.contains(mention.value()))
			.toList();
		for (Mention concept : annotation.concepts()) {
			for (Slot slot : this.byConcept.getOrDefault(concept.value(), List.of())) {
				if (open[slot.rule()] == null) {
					open[slot.rule()] = new ConceptMatch(slot.what(), annotation);
				}
				Mention match = open[slot.rule()].add(slot.place(), concept);
				if (match != null && !isTakenBack(slot.what(), match, against, annotation)) {
					found.add(match);
				}
			}
		}
		return found;
	}

	private static boolean isTakenBack(ConceptRule rule, Mention match, List<Mention> against, Annotation annotation) {
		if (against.isEmpty() || rule.unless().isEmpty()) {
			return false;
		}
		int first = annotation.clauses().sentenceOf(match.from());
		int last = annotation.clauses().sentenceOf(match.to() - 1);
		for (Mention mention : against) {
			int sentence = annotation.clauses().sentenceOf(mention.from());
			if (first <= sentence && sentence <= last && rule.unless().contains(mention.value())) {
				return true;
			}
		}
		return false;
	}

}
