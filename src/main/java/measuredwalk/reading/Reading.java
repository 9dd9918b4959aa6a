package measuredwalk.reading;

import java.util.List;

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
 */
public record Reading(List<WalkTold> walks, List<Sign> signs, @Nullable Double stiffMinutes, @Nullable Overall overall,
		Level level, List<String> levelReasons, boolean understood, List<String> unsure, @Nullable AskBack askBack,
		@Nullable Correction correction, @Nullable Answer answer, boolean noWalk) {

	public Reading {
		walks = List.copyOf(walks);
		signs = List.copyOf(signs);
		levelReasons = List.copyOf(levelReasons);
		unsure = List.copyOf(unsure);
	}

}
