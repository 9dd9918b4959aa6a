package measuredwalk.care;

import java.time.DayOfWeek;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Days of the week as people write them: 'Sundays', 'Saturday and Sunday', 'weekends'.
 */
final class DayWords {

	/** Some days, for use inside other patterns; it has no groups. */
	static final String DAYS;

	private static final String DAY = "(?:mon|tues|wednes|thurs|fri|satur|sun)days?|(?:the )?week-?ends?";

	private static final Pattern ONE = Pattern.compile("\\b(?:" + DAY + ")\\b");

	private static final int LETTERS_THAT_TELL = 3;

	static {
		DAYS = "(?:" + DAY + ")\\b(?:\\s*(?:,|and|or|&)\\s*(?:on\\s+)?(?:" + DAY + ")\\b)*";
	}

	private DayWords() {
	}

	static Set<DayOfWeek> all(String text) {
		Set<DayOfWeek> days = EnumSet.noneOf(DayOfWeek.class);
		Matcher each = ONE.matcher(text.toLowerCase(Locale.ROOT));
		while (each.find()) {
			if (each.group().contains("week")) {
				days.addAll(EnumSet.of(DayOfWeek.SATURDAY, DayOfWeek.SUNDAY));
			}
			else {
				days.add(named(each.group()));
			}
		}
		return days;
	}

	private static DayOfWeek named(String word) {
		return EnumSet.allOf(DayOfWeek.class)
			.stream()
			.filter((day) -> day.name().regionMatches(true, 0, word, 0, LETTERS_THAT_TELL))
			.findFirst()
			.orElseThrow();
	}

}
