package measuredwalk.reading.quantity;

import java.time.LocalTime;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

import org.jspecify.annotations.Nullable;

/** Finds parts of the day and times with a name: 'late afternoon', 'tonight', 'noon'. */
final class DayParts {

	/**
	 * A part of the day.
	 *
	 * @param name its name
	 * @param start when it begins
	 * @param end when it ends
	 * @param half which half of the day an hour in it is in
	 * @param next index behind its last token
	 */
	record Found(String name, LocalTime start, LocalTime end, HalfOfDay half, int next) {
	}

	private static final Map<String, Found> PARTS = new HashMap<>();

	private static final Map<String, LocalTime> TIMES = new HashMap<>();

	/** Only behind one of these is there anything to look up. */
	private static final Set<String> FIRST_WORDS = new HashSet<>();

	static {
		LexiconFile.read("clock.txt", DayParts::add);
		PARTS.keySet().forEach((name) -> FIRST_WORDS.add(firstWord(name)));
		TIMES.keySet().forEach((name) -> FIRST_WORDS.add(firstWord(name)));
	}

	private DayParts() {
	}

	/** The part of the day whose name begins there, or null. */
	static @Nullable Found at(Terms terms, int at) {
		boolean early = terms.is(at, "early");
		boolean late = terms.is(at, "late");
		Found part = named(terms, early || late ? at + 1 : at);
		if (part == null || (!early && !late)) {
			return part;
		}
		long half = (part.end().toSecondOfDay() + 59L) / 60 - part.start().toSecondOfDay() / 60;
		LocalTime middle = part.start().plusMinutes(half / 2);
		return new Found(part.name(), late ? middle : part.start(), early ? middle : part.end(), part.half(),
				part.next());
	}

	private static @Nullable Found named(Terms terms, int at) {
		String word = terms.word(at);
		if (!FIRST_WORDS.contains(word)) {
			return null;
		}
		Found one = PARTS.get(word);
		Found two = one == null || terms.is(at + 1, "time") ? PARTS.get(word + " " + terms.word(at + 1)) : null;
		Found part = two == null ? one : two;
		return part == null ? null
				: new Found(part.name(), part.start(), part.end(), part.half(), at + (two == null ? 1 : 2));
	}

	/** The time with a name that begins there, or null. */
	static @Nullable ClockPhrase timeAt(Terms terms, int at) {
		if (!FIRST_WORDS.contains(terms.word(at))) {
			return null;
		}
		LocalTime one = TIMES.get(terms.word(at));
		boolean mid = terms.is(at, "mid");
		LocalTime time = mid ? TIMES.get("mid " + terms.word(at + 1)) : one;
		return time == null ? null : new ClockPhrase(time.getHour(), time.getMinute(), 0, true,
				ClockPhrase.Strength.CLEAR, at + (mid ? 2 : 1));
	}

	/** The words that a part of the day or a named time may begin with. */
	static Set<String> firstWords() {
		return FIRST_WORDS;
	}

	/** The part of the day told with a time: 'in the morning', 'tonight', or null. */
	static @Nullable Found adjunct(Terms terms, int at, boolean behindClear) {
		int name = at;
		if (terms.is(name, "in") || terms.is(name, "at") || terms.is(name, "on") || terms.is(name, "during")) {
			name++;
		}
		if (terms.is(name, "the") || terms.is(name, "this") || terms.is(name, "last") || terms.is(name, "yesterday")
				|| terms.is(name, "that")) {
			name++;
		}
		Found part = at(terms, name);
		boolean plainNight = part != null && name == at && !behindClear && part.name().equals("night")
				&& !terms.is(at, "tonight");
		return plainNight ? null : part;
	}

	private static String firstWord(String name) {
		int blank = name.indexOf(' ');
		return blank < 0 ? name : name.substring(0, blank);
	}

	private static void add(String[] line) {
		if (line[0].equals("time")) {
			TIMES.put(joined(line, 2), LocalTime.parse(line[1]));
			return;
		}
		HalfOfDay half = HalfOfDay.valueOf(line[4].toUpperCase(Locale.ROOT));
		PARTS.put(joined(line, 5), new Found(line[1], LocalTime.parse(line[2]), LocalTime.parse(line[3]), half, 0));
	}

	private static String joined(String[] line, int from) {
		return String.join(" ", java.util.Arrays.asList(line).subList(from, line.length));
	}

}
