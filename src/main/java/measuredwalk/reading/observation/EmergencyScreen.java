package measuredwalk.reading.observation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import measuredwalk.reading.context.Annotation;
import measuredwalk.reading.lexicon.Category;
import measuredwalk.reading.lexicon.Mention;
import measuredwalk.reading.lexicon.ScreenRule;
import measuredwalk.reading.words.Words;
import org.jspecify.annotations.Nullable;

/**
 * A wide net for emergencies: words of two or three families near one another in one
 * sentence, in any order, such as gums and white. It runs on every message beside the
 * phrases, since missing an emergency is the worst fault there is.
 */
public final class EmergencyScreen {

	private final List<ScreenRule> rules;

	private final Map<Integer, List<Family>> bySymbol = new HashMap<>();

	/** A family of words in one of the rules. */
	private record Family(int rule, int family) {
	}

	/**
	 * A screen with these rules.
	 * @param rules the rules
	 */
	public EmergencyScreen(List<ScreenRule> rules) {
		this.rules = List.copyOf(rules);
		for (int rule = 0; rule < this.rules.size(); rule++) {
			int[] families = this.rules.get(rule).families();
			for (int family = 0; family < families.length; family++) {
				this.bySymbol.computeIfAbsent(families[family], (symbol) -> new ArrayList<>())
					.add(new Family(rule, family));
			}
		}
	}

	/**
	 * The emergencies that the screen sees, whatever their context.
	 * @param annotation the message's phrases
	 * @return one mention for each rule that fits, over the words that made it fit
	 */
	public List<Mention> mentions(Annotation annotation) {
		Words words = annotation.words();
		Mention[] found = new Mention[this.rules.size()];
		int[][] last = new int[this.rules.size()][];
		int sentence = 0;
		for (int at = 0; at < words.size(); at++) {
			sentence = words.isSentenceBefore(at) ? at : sentence;
			for (int symbol : words.symbols()[at]) {
				for (Family family : this.bySymbol.getOrDefault(symbol, List.of())) {
					if (!isDenied(words, at, last[family.rule()])) {
						mark(family, last, found, at, sentence);
					}
				}
			}
		}
		return Arrays.stream(found).filter((mention) -> mention != null && !isGuarded(annotation, mention)).toList();
	}

	/**
	 * The 'heat' of 'no heat in it' and the stop of 'when we stopped'; the denial itself
	 * may be one of the words that are looked for, as in 'no weight on it'.
	 */
	private static boolean isDenied(Words words, int at, int @Nullable [] places) {
		if (at > 0 && words.is(at - 1, "we") && words.form(at).startsWith("stop")) {
			return true;
		}
		return at > 0 && !words.isBreakBefore(at)
				&& (words.is(at - 1, "no") || words.is(at - 1, "not") || words.is(at - 1, "without"))
				&& (places == null || Arrays.stream(places).noneMatch((place) -> place == at - 1));
	}

	private void mark(Family family, int[][] last, @Nullable Mention[] found, int at, int sentence) {
		ScreenRule rule = this.rules.get(family.rule());
		int[] places = last[family.rule()];
		if (places == null) {
			places = new int[rule.families().length];
			Arrays.fill(places, -1);
			last[family.rule()] = places;
		}
		places[family.family()] = at;
		if (found[family.rule()] == null && earliest(places) >= sentence && isComplete(rule, places, at)) {
			found[family.rule()] = new Mention(rule.entry(), earliest(places), at + 1);
		}
	}

	private static boolean isComplete(ScreenRule rule, int[] last, int at) {
		for (int family = 0; family < last.length; family++) {
			if (last[family] < 0 || at - last[family] > rule.window()) {
				return false;
			}
			for (int other = 0; other < family; other++) {
				if (last[other] == last[family]) {
					return false;
				}
			}
		}
		return true;
	}

	private static int earliest(int[] last) {
		int earliest = last[0];
		for (int at : last) {
			earliest = Math.min(earliest, at);
		}
		return earliest;
	}

	private static boolean isGuarded(Annotation annotation, Mention mention) {
		return isGuard(annotation, mention.from()) || isGuard(annotation, mention.to() - 1);
	}

	private static boolean isGuard(Annotation annotation, int at) {
		Mention cover = annotation.coverOf(at);
		return cover != null && cover.category() == Category.GUARD;
	}

}
