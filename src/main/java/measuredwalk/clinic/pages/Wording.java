package measuredwalk.clinic.pages;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import measuredwalk.journal.MorningFacts;
import measuredwalk.journal.NoteTopic;
import measuredwalk.journal.WalkFacts;
import measuredwalk.signs.Coded;
import measuredwalk.signs.LoadKind;
import measuredwalk.signs.Sign;
import org.jspecify.annotations.Nullable;

/** Figures, times and signs as the clinic writes them. */
final class Wording {

	private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("EEE d MMM, HH:mm", Locale.UK);

	private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEEE d MMMM", Locale.UK);

	private static final DateTimeFormatter SHORT_DAY = DateTimeFormatter.ofPattern("EEE d MMM", Locale.UK);

	private static final DateTimeFormatter DATE = DateTimeFormatter.ofPattern("d MMM uuuu", Locale.UK);

	private Wording() {
	}

	static String moment(Instant at, ZoneId zone) {
		return MOMENT.format(at.atZone(zone));
	}

	static String day(LocalDate date) {
		return DAY.format(date);
	}

	static String shortDay(LocalDate date) {
		return SHORT_DAY.format(date);
	}

	static String date(LocalDate date) {
		return DATE.format(date);
	}

	static String figure(double figure) {
		double rounded = Math.round(figure * 10) / 10.0;
		return (rounded == Math.rint(rounded)) ? String.valueOf((long) rounded) : String.valueOf(rounded);
	}

	/** How long something took, in the unit that fits. */
	static String span(Duration span) {
		long minutes = span.toMinutes();
		if (minutes < 120) {
			return minutes + " min";
		}
		return (minutes < 48 * 60) ? Math.round(minutes / 60.0) + " h" : Math.round(minutes / 1440.0) + " days";
	}

	static String dose(int walks, double minutes) {
		return switch (walks) {
			case 0 -> "no more walks today";
			case 1 -> "1 walk of " + figure(minutes) + " min";
			default -> walks + " walks of " + figure(minutes) + " min";
		};
	}

	/** The same with a capital. */
	static String sentence(String words) {
		return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
	}

	static String words(Coded word) {
		return word.code().replace('-', ' ');
	}

	static String sign(Sign sign) {
		if (!sign.present()) {
			return "no " + words(sign.kind());
		}
		List<String> parts = new ArrayList<>();
		parts.add(words(sign.kind()));
		if (sign.severity() != null) {
			parts.add(words(sign.severity()));
		}
		String leg = Stream.of(sign.side(), sign.limb())
			.filter(Objects::nonNull)
			.map(Wording::words)
			.collect(Collectors.joining(" "));
		if (!leg.isEmpty()) {
			parts.add(leg);
		}
		if (sign.onsetMinute() != null) {
			parts.add("from minute " + figure(sign.onsetMinute()));
		}
		else if (sign.when() != null) {
			parts.add(words(sign.when()));
		}
		return String.join(", ", parts);
	}

	static String signs(List<Sign> signs) {
		return signs.stream().map(Wording::sign).collect(Collectors.joining("; "));
	}

	static String walk(WalkFacts facts) {
		List<String> parts = new ArrayList<>();
		String start = (facts.start() != null) ? " at " + facts.start() : "";
		parts.add("Walk" + start + ": " + amount(facts));
		if (facts.distanceMetres() != null) {
			parts.add(figure(facts.distanceMetres()) + " m");
		}
		if (!facts.loads().isEmpty()) {
			parts.add("harder: " + loads(facts.loads()));
		}
		return finish(parts, facts.signs(), facts.overall());
	}

	static String loads(Set<LoadKind> loads) {
		return loads.stream().map(Wording::words).collect(Collectors.joining(", "));
	}

	private static String amount(WalkFacts facts) {
		if (facts.minutes() == null) {
			return "minutes not told";
		}
		double low = Objects.requireNonNullElse(facts.minutesLow(), facts.minutes());
		double high = Objects.requireNonNullElse(facts.minutesHigh(), facts.minutes());
		String minutes = (high - low >= 1) ? figure(low) + " to " + figure(high) : figure(facts.minutes());
		return (facts.minutesEstimated() ? "about " : "") + minutes + " min";
	}

	static String note(NoteTopic topic) {
		return switch (topic) {
			case WEIGHT -> "Weekly answer: weight";
			case MUSCLE -> "Weekly answer: muscle";
			case MEDICINES -> "Weekly answer: medicines";
			case ENJOYMENT -> "Weekly answer: enjoyment";
			case NO_WALK -> "No walk that day";
		};
	}

	static String morning(MorningFacts facts) {
		List<String> parts = new ArrayList<>();
		parts.add("Morning"
				+ ((facts.stiffMinutes() != null) ? ": stiff for " + figure(facts.stiffMinutes()) + " min" : ""));
		return finish(parts, facts.signs(), facts.overall());
	}

	private static String finish(List<String> parts, List<Sign> signs, @Nullable Coded overall) {
		if (overall != null) {
			parts.add("overall " + words(overall));
		}
		signs.stream().map(Wording::sign).forEach(parts::add);
		if (signs.isEmpty() && overall == null) {
			parts.add("nothing seen");
		}
		return String.join("; ", parts);
	}

}
