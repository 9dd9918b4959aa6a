package measuredwalk.care;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import measuredwalk.conversations.Phrase;
import measuredwalk.conversations.Replies;
import measuredwalk.journal.MorningFacts;
import measuredwalk.journal.JournalEntry;
import measuredwalk.journal.WalkFacts;
import measuredwalk.records.RecordWords;
import measuredwalk.signs.LoadKind;
import measuredwalk.signs.Overall;
import measuredwalk.signs.Sign;
import measuredwalk.signs.SignKind;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** A journal entry in one line of everyday words. */
@Component
class EntryWords implements RecordWords {

	private static final Locale ENGLISH = Locale.UK;

	private static final String LOADS = "load";

	private final Replies replies;

	EntryWords(Replies replies) {
		this.replies = replies;
		Arrays.stream(LoadKind.values()).forEach((load) -> replies.word(LOADS, load));
	}

	@Override
	public String walk(WalkFacts facts, LocalDate today) {
		String amount = Stream.of(minutes(facts), distance(facts))
			.filter(Objects::nonNull)
			.collect(Collectors.joining(", "));
		String when = day(facts.date(), today) + start(facts.start());
		return sentence((amount.isEmpty() ? "a walk" : amount) + loads(facts.loads()) + when, facts.signs(),
				facts.overall(), !facts.signs().isEmpty());
	}

	/** What made it harder, such as ' on hills and with play'; empty for nothing. */
	String loads(Set<LoadKind> loads) {
		List<String> words = loads.stream().sorted().map((load) -> this.replies.word(LOADS, load)).toList();
		return words.isEmpty() ? "" : " " + WhichDog.listed(words, " and ");
	}

	@Override
	public String morning(MorningFacts facts, LocalDate today) {
		List<String> parts = new ArrayList<>();
		parts.add(morningOf(facts.date(), today));
		facts.signs().stream().map(this::sign).forEach(parts::add);
		if (facts.stiffMinutes() != null) {
			parts.add("loose after " + Figures.minutes(facts.stiffMinutes()));
		}
		return sentence(String.join("; ", parts), List.of(), facts.overall(), parts.size() > 1);
	}

	private static String morningOf(LocalDate date, LocalDate today) {
		if (date.equals(today)) {
			return "this morning";
		}
		return date.equals(today.minusDays(1)) ? "yesterday morning" : "morning" + day(date, today);
	}

	/** All that a message left in the journal. */
	String written(Written written, LocalDate today) {
		String walks = written.walks()
			.stream()
			.map((walk) -> walk(walk.facts(), today))
			.collect(Collectors.joining(" "));
		String morning = (written.morning() != null) ? morning(written.morning().facts(), today) : "";
		return (walks + " " + morning).strip();
	}

	String entry(JournalEntry entry, LocalDate today) {
		return entry.asWalk()
			.map((walk) -> walk(walk.facts(), today))
			.or(() -> entry.asMorning().map((morning) -> morning(morning.facts(), today)))
			.orElseThrow();
	}

	@Override
	public String sign(Sign sign) {
		if (!sign.present()) {
			return this.replies.word("denied", sign.kind());
		}
		String how = Objects.requireNonNullElse(word("severity", sign.severity()), "");
		String seen = this.replies.word("seen", sign.kind()).replace("{how}", how).strip();
		StringBuilder words = new StringBuilder(seen);
		String place = place(sign);
		if (!place.isEmpty()) {
			words.append(", ").append(place);
		}
		if (sign.onsetMinute() != null) {
			words.append(onset(sign.onsetMinute()));
		}
		else if (sign.when() != null) {
			words.append(' ').append(word("when", sign.when()));
		}
		return words.toString();
	}

	/** Dragging is of a back foot already: only the side is news. */
	private String place(Sign sign) {
		String limb = (sign.kind() == SignKind.HIND_LIMB_DRAGGING) ? null : word("limb", sign.limb());
		return Stream.of(limb, word("side", sign.side())).filter(Objects::nonNull).collect(Collectors.joining(" "));
	}

	private static String onset(double minute) {
		return (minute < 1) ? " from the start" : " after " + Figures.minutes(minute);
	}

	private @Nullable String word(String group, measuredwalk.signs.@Nullable Coded coded) {
		return (coded != null) ? this.replies.word(group, coded) : null;
	}

	private String sentence(String beginning, List<Sign> signs, @Nullable Overall overall, boolean anySign) {
		List<String> parts = new ArrayList<>();
		parts.add(beginning);
		signs.stream().map(this::sign).forEach(parts::add);
		if (overall != null) {
			parts.add(this.replies.word("overall", overall));
		}
		else if (!anySign) {
			parts.add(this.replies.say(Phrase.SIGNS_NONE));
		}
		return String.join("; ", parts) + ".";
	}

	private static @Nullable String minutes(WalkFacts facts) {
		if (facts.minutes() == null) {
			return null;
		}
		double low = Objects.requireNonNullElse(facts.minutesLow(), facts.minutes());
		double high = Objects.requireNonNullElse(facts.minutesHigh(), facts.minutes());
		boolean range = !facts.minutesEstimated() && high - low >= 1;
		String minutes = range ? Figures.minutes(low, high) : Figures.minutes(facts.minutes());
		return facts.minutesEstimated() ? "about " + minutes : minutes;
	}

	private static @Nullable String distance(WalkFacts facts) {
		return (facts.distanceMetres() != null) ? Figures.distance(facts.distanceMetres()) : null;
	}

	private static String start(@Nullable LocalTime start) {
		return (start != null) ? " at " + start : "";
	}

	static String day(LocalDate date, LocalDate today) {
		if (date.equals(today)) {
			return " today";
		}
		if (date.equals(today.minusDays(1))) {
			return " yesterday";
		}
		return " on " + date.getDayOfWeek().getDisplayName(TextStyle.FULL, ENGLISH) + " " + date.getDayOfMonth() + " "
				+ date.getMonth().getDisplayName(TextStyle.FULL, ENGLISH);
	}

}
