package measuredwalk.reading.gloss;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.jspecify.annotations.Nullable;

/** Rules, found by the first word that a phrase must have. */
final class Rules {

	/** What stands for any number in the index. */
	private static final String ANY_NUMBER = "0";

	/**
	 * A rule that fits.
	 *
	 * @param rule the rule
	 * @param fit where
	 */
	record Chosen(GlossRule rule, PhraseMatch.Fit fit) {
	}

	private final Map<String, List<GlossRule>> byFirst = new HashMap<>();

	private final Set<String> words = new HashSet<>();

	Rules(List<GlossRule> rules) {
		for (GlossRule rule : rules) {
			Piece first = rule.pieces().stream().filter(Piece::isOwnWord).findFirst().orElseThrow();
			Set<String> keys = switch (first.kind()) {
				case FIGURE, MINUTE -> Set.of(ANY_NUMBER);
				case ACCENTED -> Set.of(Folded.word(first.words().iterator().next()));
				default -> first.words();
			};
			keys.forEach((key) -> this.byFirst.computeIfAbsent(key, (word) -> new ArrayList<>()).add(rule));
			rule.pieces().forEach((piece) -> piece.words().forEach((word) -> this.words.add(Folded.word(word))));
		}
	}

	Set<String> words() {
		return this.words;
	}

	/**
	 * The longest phrase that begins at a word; of equally long ones the first in the
	 * files.
	 */
	@Nullable Chosen at(List<Word> words, int at) {
		Word word = words.get(at);
		Chosen chosen = longest(words, at, this.byFirst.getOrDefault(word.plain(), List.of()), null);
		return (word.kind() != Word.Kind.NUMBER) ? chosen
				: longest(words, at, this.byFirst.getOrDefault(ANY_NUMBER, List.of()), chosen);
	}

	private static @Nullable Chosen longest(List<Word> words, int at, List<GlossRule> rules, @Nullable Chosen before) {
		Chosen best = before;
		for (GlossRule rule : rules) {
			PhraseMatch.Fit fit = PhraseMatch.of(words, at, rule.pieces());
			if (fit != null && (best == null || fit.end() > best.fit().end())) {
				best = new Chosen(rule, fit);
			}
		}
		return best;
	}

}
