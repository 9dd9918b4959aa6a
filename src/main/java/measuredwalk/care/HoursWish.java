package measuredwalk.care;

import java.time.DayOfWeek;
import java.time.LocalTime;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import measuredwalk.household.Hours;

/**
 * What somebody wants changed about the hours, read from plain words.
 *
 * @param hours all hours as they shall be
 * @param walks the walk hours as they shall be, or none when they stay
 * @param understood false when nothing to change was found
 */
record HoursWish(Hours hours, List<LocalTime> walks, boolean understood) {

	private static final Pattern MORNING = Pattern
		.compile("\\bmornings?\\b(?:\\s+(?:at|from|around|about))?\\s+(" + ClockWords.TIME + ")");

	private static final Pattern WALKS = Pattern.compile("\\bwalks?\\b(?:\\s+(?:at|around|about))?\\s+("
			+ ClockWords.TIME + "(?:\\s*(?:,|and|&|or)\\s*(?:at\\s+)?" + ClockWords.TIME + ")*)");

	private static final Pattern QUIET = Pattern.compile("\\bquiet\\b(?:\\s+(?:from|after|between))?\\s+("
			+ ClockWords.TIME + ")\\s*(?:to|until|till|and|-)\\s*(" + ClockWords.TIME + ")");

	private static final Pattern OFF = Pattern
		.compile("\\b(?:not|never|nothing|off|free)\\s+(?:on|at|over)\\s+(" + DayWords.DAYS + ")");

	private static final Pattern ON_AGAIN = Pattern.compile(
			"\\b(?<!not )(?<!never )(?<!nothing )(?:on|at)\\s+(" + DayWords.DAYS + ")\\s+(?:again|too|as well)\\b");

	private static final Pattern EVERY_DAY = Pattern.compile("\\b(?:every day|each day|all days|no days? off)\\b");

	private static final Pattern NO_WALK_QUESTIONS = Pattern.compile("\\b(?:no (?:more )?walk (?:questions?|prompts?)"
			+ "|no (?:more )?questions about walks?|(?:don['’]?t|do not|stop) ask(?:ing)? (?:me )?about (?:the )?walks?)\\b");

	private static final Pattern WALK_QUESTIONS = Pattern
		.compile("\\b(?:walk questions|ask (?:me )?about (?:the )?walks?)\\b");

	private static final Pattern NO_PICTURE = Pattern
		.compile("\\b(?:no|stop|without|don['’]?t|do not|end|never)\\b[^.,;]*\\bpictures?\\b");

	private static final Pattern PICTURE = Pattern.compile("\\bpictures?\\b");

	private static final LocalTime EARLIEST_MORNING = LocalTime.of(4, 0);

	private static final LocalTime LATEST_MORNING = LocalTime.NOON;

	HoursWish {
		walks = List.copyOf(walks);
	}

	static HoursWish read(String words, Hours now) {
		String text = words.toLowerCase(Locale.ROOT);
		List<LocalTime> walks = group(WALKS, text).map(ClockWords::all).orElse(List.of());
		Hours hours = withQuiet(text,
				withMorning(text, withDays(text, withPicture(text, withWalkQuestions(text, now, walks)))));
		boolean understood = !hours.equals(now) || !walks.isEmpty() || repeats(text);
		return new HoursWish(hours, walks, understood);
	}

	/** What holds already is understood all the same. */
	private static boolean repeats(String text) {
		return List.of(OFF, EVERY_DAY, QUIET, NO_WALK_QUESTIONS, WALK_QUESTIONS, PICTURE)
			.stream()
			.anyMatch((each) -> each.matcher(text).find())
				|| group(MORNING, text).map(ClockWords::all)
					.stream()
					.flatMap(List::stream)
					.anyMatch(HoursWish::morning);
	}

	private static Hours withMorning(String text, Hours hours) {
		return group(MORNING, text).map(ClockWords::all)
			.flatMap((times) -> times.stream().findFirst())
			.filter(HoursWish::morning)
			.map(hours::withMorningAt)
			.orElse(hours);
	}

	private static boolean morning(LocalTime time) {
		return !time.isBefore(EARLIEST_MORNING) && !time.isAfter(LATEST_MORNING);
	}

	private static Hours withQuiet(String text, Hours hours) {
		Matcher quiet = QUIET.matcher(text);
		if (!quiet.find()) {
			return hours;
		}
		List<LocalTime> from = ClockWords.all(quiet.group(1));
		List<LocalTime> until = ClockWords.all(quiet.group(2));
		return (from.isEmpty() || until.isEmpty()) ? hours : hours.withQuiet(from.get(0), until.get(0));
	}

	private static Hours withDays(String text, Hours hours) {
		Set<DayOfWeek> days = EnumSet.noneOf(DayOfWeek.class);
		if (!EVERY_DAY.matcher(text).find()) {
			days.addAll(hours.daysOff());
		}
		group(OFF, text).map(DayWords::all).ifPresent(days::addAll);
		group(ON_AGAIN, text).map(DayWords::all).ifPresent(days::removeAll);
		return hours.withDaysOff(days);
	}

	/** Who names walk hours wants to be asked about walks. */
	private static Hours withWalkQuestions(String text, Hours hours, List<LocalTime> walks) {
		if (NO_WALK_QUESTIONS.matcher(text).find()) {
			return hours.withWalkQuestions(false);
		}
		boolean wanted = !walks.isEmpty() || WALK_QUESTIONS.matcher(text).find();
		return wanted ? hours.withWalkQuestions(true) : hours;
	}

	private static Hours withPicture(String text, Hours hours) {
		if (NO_PICTURE.matcher(text).find()) {
			return hours.withFortnightPicture(false);
		}
		return PICTURE.matcher(text).find() ? hours.withFortnightPicture(true) : hours;
	}

	private static Optional<String> group(Pattern pattern, String text) {
		Matcher matcher = pattern.matcher(text);
		return matcher.find() ? Optional.of(matcher.group(1)) : Optional.empty();
	}

}
