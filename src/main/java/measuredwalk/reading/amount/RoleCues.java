package measuredwalk.reading.amount;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

import measuredwalk.reading.context.Annotation;
import measuredwalk.reading.lexicon.Category;
import measuredwalk.reading.lexicon.Mention;
import measuredwalk.reading.words.Words;

/** The cues of a message that give its numbers their parts, by the part they give. */
final class RoleCues {

	/** Words that begin something new: 'walked 20 then rested'. */
	private static final Set<String> JOINING = Set.of("then", "and", "but", "so");

	private final Words words;

	private final Map<String, List<Mention>> byPart = new HashMap<>();

	RoleCues(Annotation annotation) {
		this.words = annotation.words();
		for (Mention mention : annotation.mentions(Category.NUMBER_CUE)) {
			this.byPart.computeIfAbsent(mention.value(), (part) -> new ArrayList<>(2)).add(mention);
		}
	}

	/** The cues for a part, wherever they stand. */
	List<Mention> of(String part) {
		return this.byPart.getOrDefault(part, List.of());
	}

	/** Whether a cue for the part stands before or after the number, within its reach. */
	boolean has(String part, Placed placed) {
		return before(part, placed) || after(part, placed);
	}

	/** Whether a cue for the part stands before the number, within its reach. */
	boolean before(String part, Placed placed) {
		for (Mention cue : of(part)) {
			if (cue.entry().has("before") && cue.from() < placed.from() && cue.to() < placed.to()
					&& placed.from() - cue.to() <= reach(cue) && isUnbroken(cue.to(), placed.from())) {
				return true;
			}
		}
		return false;
	}

	/** Whether a cue for the part stands after the number, within its reach. */
	boolean after(String part, Placed placed) {
		for (Mention cue : of(part)) {
			if (cue.entry().has("after") && cue.from() >= placed.to() && cue.from() - placed.to() <= reach(cue)
					&& isUnbroken(placed.to(), cue.from()) && !this.words.is(placed.to(), "with")) {
				return true;
			}
		}
		return false;
	}

	/** Whether a cue for the part begins before the number and takes it in. */
	boolean over(String part, Placed placed) {
		for (Mention cue : of(part)) {
			if (cue.from() < placed.from() && cue.to() > placed.from()) {
				return true;
			}
		}
		return false;
	}

	/** Whether a cue for the part lies between two words. */
	boolean between(String part, int from, int to) {
		for (Mention cue : of(part)) {
			if (cue.from() >= from && cue.to() <= to) {
				return true;
			}
		}
		return false;
	}

	private static int reach(Mention cue) {
		String reach = cue.entry().flag("reach");
		return (reach == null) ? 0 : Integer.parseInt(reach);
	}

	/** No mark ends a clause at either of the words or between them. */
	private boolean isUnbroken(int from, int to) {
		for (int at = from; at <= to; at++) {
			boolean joined = at >= from && at < to && JOINING.contains(this.words.form(at));
			if (joined || this.words.isBreakBefore(at)) {
				return false;
			}
		}
		return true;
	}

}
