package measuredwalk.reading.amount;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;

import measuredwalk.reading.Question;
import measuredwalk.reading.observation.Observation;
import measuredwalk.reading.quantity.Duration;
import measuredwalk.reading.words.Words;
import measuredwalk.signs.SignKind;

/** Tells which numbers of a morning's message say how long stiffness took to ease. */
final class StiffnessRoles {

	/** What owners call it when a dog has not loosened up yet. */
	private static final Set<SignKind> STIFF = EnumSet.of(SignKind.STIFFNESS, SignKind.DIFFICULTY_RISING,
			SignKind.LAMENESS);

	private final RoleCues cues;

	private final Words words;

	private final boolean stiffMorning;

	StiffnessRoles(RoleCues cues, Question question, List<Observation> observations, Words words) {
		this.cues = cues;
		this.words = words;
		this.stiffMorning = question == Question.MORNING && observations.stream()
			.anyMatch((seen) -> seen.sign().present() && STIFF.contains(seen.sign().kind()));
	}

	boolean isStiffMorning() {
		return this.stiffMorning;
	}

	boolean has(Placed placed) {
		return this.stiffMorning && (placed.quantity() instanceof Duration || this.cues.has("eased", placed)
				|| this.cues.before("first", placed) || this.words.is(placed.from() - 1, "in"));
	}

}
