package measuredwalk.reading.level;

import java.util.function.Predicate;

import measuredwalk.reading.Level;
import measuredwalk.signs.Basis;

/**
 * A rule that gives a message a level.
 *
 * @param reason why, in plain words
 * @param level how soon somebody must act
 * @param basis what it rests on
 * @param fits whether the rule fits what was read
 */
public record LevelRule(String reason, Level level, Basis basis, Predicate<Findings> fits) {
}
