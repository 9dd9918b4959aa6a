package measuredwalk.reading.observation;

import java.util.ArrayList;
import java.util.List;

import measuredwalk.reading.context.Annotation;
import measuredwalk.reading.lexicon.Category;
import measuredwalk.reading.lexicon.Mention;
import measuredwalk.reading.lexicon.ScreenRule;
import measuredwalk.reading.words.Words;

/**
 * A wide net for emergencies: words of two or three families near one another in one
 * sentence, in any order, such as gums and white. It runs on every message beside the
 * phrases, since missing an emergency is the worst fault there is.
 */
public final class EmergencyScreen {

	private final List<ScreenRule> rules;

	/**
	 * A screen with these rules.
	 * @param rules the rules
	 */
	public EmergencyScreen(List<ScreenRule> rules) {
		this.rules = List.copyOf(rules);
	}

	/**
	 * The emergencies that the screen sees, whatever their context.
	 * @param annotation the message's phrases
	 * @return one mention for each rule that fits, over the words that made it fit
	 */
	public List<Mention> mentions(Annotation annotation) {
		Words words = annotation.words();
		List<Mention> found = new ArrayList<>();
		for (ScreenRule rule : this.rules) {
			int[] last = new int[rule.families().length];
			java.util.Arrays.fill(last, -1);
			for (int at = 0; at < words.size(); at++) {
				if (words.isSentenceBefore(at)) {
					java.util.Arrays.fill(last, -1);
				}
				if (mark(rule, words.symbols()[at], last, at) && isComplete(rule, last, at)) {
					found.add(new Mention(rule.entry(), earliest(last), at + 1));
					break;
				}
			}
		}
		found.removeIf((mention) -> isGuarded(annotation, mention));
		return found;
	}

	private static boolean mark(ScreenRule rule, int[] symbols, int[] last, int at) {
		boolean marked = false;
		for (int family = 0; family < last.length; family++) {
			for (int symbol : symbols) {
				if (symbol == rule.families()[family]) {
					last[family] = at;
					marked = true;
				}
			}
		}
		return marked;
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
