package measuredwalk.reading.load;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

import measuredwalk.reading.LoadTold;
import measuredwalk.reading.OwnerMessage;
import measuredwalk.reading.context.Annotation;
import measuredwalk.reading.context.Context;
import measuredwalk.reading.context.ContextReader;
import measuredwalk.reading.words.Words;
import measuredwalk.signs.LoadKind;
import org.jspecify.annotations.Nullable;

/** Reads what made the walks of one message harder than usual. */
final class LoadScan {

	/** Words between 'avoided' and what was. */
	private static final int AVOIDED_WITHIN = 4;

	/** Words between 'usual' and what is. */
	private static final int USUAL_WITHIN = 2;

	private final Annotation annotation;

	private final ContextReader contexts;

	private final List<Found> found = new ArrayList<>();

	LoadScan(Annotation annotation, ContextReader contexts) {
		this.annotation = annotation;
		this.contexts = contexts;
	}

	/** A cue at its place. */
	private record Found(CueRole role, @Nullable LoadKind kind, int from, int to) {
	}

	/** What was found, of each walk told. */
	List<LoadTold> told(List<Integer> places, boolean yesterday) {
		Set<LoadTold> told = new LinkedHashSet<>();
		for (Found each : this.found) {
			Boolean present = present(each, yesterday);
			LoadKind kind = (each.role() == CueRole.FLAT) ? LoadKind.HILLS : each.kind();
			if (present != null && kind != null) {
				walksOf(each, places).forEach((walk) -> told.add(new LoadTold(kind, present, walk)));
			}
		}
		told.removeIf((one) -> !one.present() && told.contains(new LoadTold(one.kind(), true, one.walk())));
		return List.copyOf(told);
	}

	/** Finds the cues of a message. A dog may be called Sandy. */
	void find(LoadCues cues, OwnerMessage message) {
		Words words = this.annotation.words();
		String name = (message.dogName() == null) ? "" : message.dogName().toLowerCase(Locale.ROOT);
		for (int at = 0; at < words.size(); at++) {
			LoadCue cue = words.is(at, name) ? null : cues.longestAt(words, at);
			if (cue != null) {
				this.found.add(new Found(cue.role(), cue.kind(), at, at + cue.length()));
				at += cue.length() - 1;
			}
		}
		for (int at : WarmDegrees.in(words, message.now())) {
			this.found.add(new Found(CueRole.LOAD, LoadKind.WARM_DAY, at, at + 1));
		}
	}

	/** True when told, false when denied, null when it says nothing of a walk taken. */
	private @Nullable Boolean present(Found each, boolean yesterday) {
		boolean flat = each.role() == CueRole.FLAT;
		if (each.kind() == null && !flat) {
			return null;
		}
		Context context = this.contexts.of(each.from(), each.to());
		if (!isPlain(context, yesterday) || isAsked(each) || isStillToCome(each) || isUsual(each)) {
			return null;
		}
		boolean denied = context.negated() || isAvoided(each);
		return flat ? (denied ? null : Boolean.FALSE) : Boolean.valueOf(!denied);
	}

	private static boolean isPlain(Context context, boolean yesterday) {
		boolean past = context.historical() && !(yesterday && context.recent());
		return !past && !context.hypothetical() && !context.other() && !context.uncertain() && !context.hedged()
				&& !context.less();
	}

	private boolean isAsked(Found each) {
		return this.annotation.words().markBefore(this.annotation.clauses().sentenceEnd(each.from())) == '?';
	}

	private boolean isAvoided(Found each) {
		return this.found.stream()
			.anyMatch((cue) -> cue.role() == CueRole.AVOIDED && sameClause(cue, each) && cue.to() <= each.from()
					&& each.from() - cue.to() <= AVOIDED_WITHIN);
	}

	private boolean isUsual(Found each) {
		return this.found.stream()
			.anyMatch((cue) -> cue.role() == CueRole.USUAL && sameClause(cue, each)
					&& (cue.to() <= each.from() ? each.from() - cue.to() < USUAL_WITHIN : cue.from() == each.to()));
	}

	private boolean isStillToCome(Found each) {
		return this.found.stream().anyMatch((cue) -> cue.role() == CueRole.LATER && sameClause(cue, each));
	}

	private boolean sameClause(Found one, Found other) {
		return this.annotation.clauses().of(one.from()) == this.annotation.clauses().of(other.from());
	}

	/** The walk that is told nearest to it; all of them when several are told at once. */
	private List<@Nullable Integer> walksOf(Found each, List<Integer> places) {
		List<@Nullable Integer> walks = new ArrayList<>();
		int nearest = Integer.MAX_VALUE;
		for (int walk = 0; walk < places.size(); walk++) {
			int distance = distance(each.from(), places.get(walk));
			if (distance < nearest) {
				walks.clear();
				nearest = distance;
			}
			if (distance == nearest) {
				walks.add(walk);
			}
		}
		if (walks.isEmpty()) {
			walks.add(null);
		}
		return walks;
	}

	/** In the same clause comes before in the same sentence, and that before the rest. */
	private int distance(int cue, int walk) {
		int words = this.annotation.words().size();
		if (walk < 0 || walk >= words) {
			return 0;
		}
		int clause = (this.annotation.clauses().of(cue) == this.annotation.clauses().of(walk)) ? 0 : words;
		int sentence = (this.annotation.clauses().sentenceOf(cue) == this.annotation.clauses().sentenceOf(walk)) ? 0
				: 2 * words;
		return Math.abs(cue - walk) + clause + sentence;
	}

}
