package measuredwalk.reading;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;

import measuredwalk.signs.LoadKind;
import measuredwalk.signs.Overall;
import measuredwalk.signs.Sign;
import org.jspecify.annotations.Nullable;

/**
 * What was read from a message: only what its text supports.
 *
 * @param walks one entry for each walk told
 * @param signs signs seen and signs denied, of this dog, now
 * @param stiffMinutes how many minutes morning stiffness took to ease, or null
 * @param overall how the dog was against its own usual, or null
 * @param level how soon somebody must act, from this text and the medicines given with it
 * @param levelReasons the words for why it has that level, most serious first; empty for
 * {@link Level#NONE}
 * @param understood false when nothing of use could be read, so that the bot asks again
 * @param unsure paths of fields on which the bot should ask back, such as
 * {@code walks[0].minutes}
 * @param askBack the one clear question to ask about the least sure field, or null
 * @param correction what the message corrects of an earlier one, or null
 * @param answer a bare yes or no, or null
 * @param noWalk true when the message says that there was no walk
 * @param loads what made a walk harder than usual, told or denied
 */
public record Reading(List<WalkTold> walks, List<Sign> signs, @Nullable Double stiffMinutes, @Nullable Overall overall,
		Level level, List<String> levelReasons, boolean understood, List<String> unsure, @Nullable AskBack askBack,
		@Nullable Correction correction, @Nullable Answer answer, boolean noWalk, List<LoadTold> loads) {

	public Reading {
		walks = List.copyOf(walks);
		signs = List.copyOf(signs);
		levelReasons = List.copyOf(levelReasons);
		unsure = List.copyOf(unsure);
		loads = List.copyOf(loads);
	}

	/**
	 * A reading without loads.
	 * @param walks one entry for each walk told
	 * @param signs signs seen and signs denied
	 * @param stiffMinutes how many minutes morning stiffness took to ease, or null
	 * @param overall how the dog was against its own usual, or null
	 * @param level how soon somebody must act
	 * @param levelReasons the words for why
	 * @param understood false when nothing of use could be read
	 * @param unsure paths of fields on which the bot should ask back
	 * @param askBack the one clear question to ask, or null
	 * @param correction what it corrects, or null
	 * @param answer a bare yes or no, or null
	 * @param noWalk true when it says that there was no walk
	 */
	public Reading(List<WalkTold> walks, List<Sign> signs, @Nullable Double stiffMinutes, @Nullable Overall overall,
			Level level, List<String> levelReasons, boolean understood, List<String> unsure, @Nullable AskBack askBack,
			@Nullable Correction correction, @Nullable Answer answer, boolean noWalk) {
		this(walks, signs, stiffMinutes, overall, level, levelReasons, understood, unsure, askBack, correction, answer,
				noWalk, List.of());
	}

	/**
	 * What made one of the walks harder.
	 * @param walk its place among the walks; where none is told, what was told of any
	 * @return what was told of it and not denied
	 */
	public Set<LoadKind> loadsOf(int walk) {
		Set<LoadKind> kinds = EnumSet.noneOf(LoadKind.class);
		this.loads.stream()
			.filter((load) -> load.present() && (load.walk() == null || load.walk() == walk))
			.forEach((load) -> kinds.add(load.kind()));
		return kinds;
	}

	Reading withLoads(List<LoadTold> told) {
		return new Reading(this.walks, this.signs, this.stiffMinutes, this.overall, this.level, this.levelReasons,
				this.understood, this.unsure, this.askBack, this.correction, this.answer, this.noWalk, told);
	}

}
