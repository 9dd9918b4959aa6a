package measuredwalk.reading.amount;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;

import measuredwalk.reading.Question;
import measuredwalk.reading.context.Annotation;
import measuredwalk.reading.observation.Observation;
import measuredwalk.reading.quantity.Duration;
import measuredwalk.reading.words.Words;
import measuredwalk.signs.SignKind;

/** Tells which numbers of a morning's message say how long stiffness took to ease. */
final class StiffnessRoles {

	/** What owners call it when a dog has not loosened up yet. */
	private static final Set<SignKind> STIFF = EnumSet.of(SignKind.STIFFNESS, SignKind.DIFFICULTY_RISING,
			SignKind.LAMENESS);

	private static final Set<String> LASTING = Set.of("for", "about", "around", "a", "good", "nearly", "over",
			"roughly", "him", "her", "first");

	private static final Set<String> TAKING = Set.of("took", "takes", "take", "taking", "needed", "needs");

	private static final Set<String> EASING = Set.of("ease", "loosen", "limber", "unwind", "settle", "wear", "free",
			"shift", "soften", "warm");

	private static final Set<String> MOVING = Set.of("going", "moving", "up", "started", "his", "her");

	private final RoleCues cues;

	private final Words words;

	private final Neighbours near;

	private final List<Observation> observations;

	private final boolean stiffMorning;

	private final boolean unasked;

	private final boolean morning;

	StiffnessRoles(Annotation annotation, RoleCues cues, Question question, List<Observation> observations) {
		this.cues = cues;
		this.words = annotation.words();
		this.near = new Neighbours(annotation);
		this.observations = observations;
		this.unasked = question == Question.ANY;
		this.morning = question == Question.MORNING;
		this.stiffMorning = question == Question.MORNING && observations.stream()
			.anyMatch((seen) -> seen.sign().present() && STIFF.contains(seen.sign().kind()));
	}

	boolean isStiffMorning() {
		return this.stiffMorning;
	}

	/** 'stiff about 10': a bare number that ends its clause. */
	private boolean isAlone(Placed placed) {
		boolean ofSign = this.observations.stream()
			.anyMatch((seen) -> this.near.clause(seen) == this.near.clause(placed));
		return ofSign && this.words.isBreakBefore(placed.to()) && !this.words.isBreakBefore(placed.from())
				&& !this.cues.before("numbered", placed);
	}

	/** 'stiff for 40 minutes' out of the blue is told of the morning, not of a walk. */
	private boolean isToldUnasked(Placed placed) {
		return this.unasked && placed.quantity() instanceof Duration && !this.near.isWalkInSentence(placed)
				&& this.observations.stream()
					.anyMatch((seen) -> seen.sign().present() && seen.sign().kind() == SignKind.STIFFNESS
							&& (lasts(seen, placed) || isTakenToEase(placed)));
	}

	private boolean lasts(Observation stiff, Placed placed) {
		int at = placed.from() - 1;
		while (at > stiff.mention().from() && LASTING.contains(this.words.form(at))) {
			at--;
		}
		return at == stiff.mention().to() - 1 && !this.words.isBreakBefore(placed.from());
	}

	private boolean isTakenToEase(Placed placed) {
		int at = placed.from() - 1;
		while (at > 0 && LASTING.contains(this.words.form(at))) {
			at--;
		}
		int to = placed.to() + 1;
		boolean taken = at >= 0 && TAKING.contains(this.words.form(at)) && to < this.words.size();
		boolean under = this.words.is(to, "get") && to + 1 < this.words.size()
				&& MOVING.contains(this.words.form(to + 1));
		return taken && this.words.is(placed.to(), "to") && (under || EASING.contains(this.words.form(to)));
	}

	boolean has(Placed placed) {
		if (isToldUnasked(placed) || (this.morning && isTakenToEase(placed))) {
			return true;
		}
		boolean hour = !(placed.quantity() instanceof Duration) && this.cues.before("hour-told", placed);
		return this.stiffMorning && !hour && !this.near.isWalked(placed)
				&& (placed.quantity() instanceof Duration || this.cues.has("eased", placed)
						|| this.cues.before("loosened", placed) || this.cues.before("first", placed) || isAlone(placed)
						|| this.words.is(placed.from() - 1, "in"));
	}

}
