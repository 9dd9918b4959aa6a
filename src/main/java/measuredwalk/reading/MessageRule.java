package measuredwalk.reading;

import java.util.List;
import java.util.stream.Stream;

import measuredwalk.reading.level.LevelRules;
import measuredwalk.reading.level.UrgentWording;
import measuredwalk.signs.Basis;

/**
 * A rule for the level of a message, to be shown to those who answer for it.
 *
 * @param reason what it finds, in plain words
 * @param level how soon somebody must act
 * @param basis what it rests on
 */
public record MessageRule(String reason, Level level, Basis basis) {

	/**
	 * All rules that a message is read by.
	 * @return the rules, the most serious first; the learned net last
	 */
	public static List<MessageRule> all() {
		return Stream.concat(LevelRules.all().stream(), UrgentWording.rules().stream())
			.map((rule) -> new MessageRule(rule.reason(), rule.level(), rule.basis()))
			.toList();
	}

}
