package measuredwalk.care;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import measuredwalk.conversations.Part;
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

	private static final String LOADS = "load";

	private final Replies replies;

	private final Figures figures;

	EntryWords(Replies replies, Figures figures) {
		this.replies = replies;
		this.figures = figures;
		Arrays.stream(LoadKind.values()).forEach((load) -> replies.word(LOADS, load));
	}

	@Override
	public String walk(WalkFacts facts, LocalDate today) {
		String amount = Stream.of(minutes(facts), distance(facts))
			.filter(Objects::nonNull)
			.collect(Collectors.joining(", "));
		String walk = amount.isEmpty() ? this.replies.part(Part.A_WALK) : amount;
		String harder = facts.loads().isEmpty() ? walk : this.replies.part(Part.WITH_LOADS, walk, loads(facts.loads()));
		String when = this.replies.part(Part.ON_DAY, harder, this.figures.day(facts.date(), today));
		return sentence(at(when, facts.start()), facts.signs(), facts.overall(), !facts.signs().isEmpty());
	}

	/** What made it harder, such as 'on hills and with play'; empty for nothing. */
	String loads(Set<LoadKind> loads) {
		return this.figures.and(loads.stream().sorted().map((load) -> this.replies.word(LOADS, load)).toList());
	}

	@Override
	public String morning(MorningFacts facts, LocalDate today) {
		List<String> parts = new ArrayList<>();
		parts.add(morningOf(facts.date(), today));
		facts.signs().stream().map(this::sign).forEach(parts::add);
		if (facts.stiffMinutes() != null) {
			parts.add(this.replies.part(Part.LOOSE_AFTER, this.figures.minutes(facts.stiffMinutes())));
		}
		return sentence(String.join("; ", parts), List.of(), facts.overall(), parts.size() > 1);
	}

	private String morningOf(LocalDate date, LocalDate today) {
		if (date.equals(today)) {
			return this.replies.part(Part.THIS_MORNING);
		}
		return date.equals(today.minusDays(1)) ? this.replies.part(Part.YESTERDAY_MORNING)
				: this.replies.part(Part.ON_DAY, this.replies.part(Part.MORNING), this.figures.day(date, today));
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
		String seen = withDegree(this.replies.word("seen", sign.kind()), sign).replace("{how}", how)
			.replace("  ", " ")
			.strip();
		String place = place(sign);
		String words = place.isEmpty() ? seen : this.replies.part(Part.PLACE, seen, place);
		if (sign.onsetMinute() != null) {
			return onset(words, sign.onsetMinute());
		}
		return (sign.when() != null) ? this.replies.part(Part.SEEN_WHEN, words, this.replies.word("when", sign.when()))
				: words;
	}

	/** In some languages a noun needs another word for how bad it was than a verb. */
	private String withDegree(String words, Sign sign) {
		return words.contains("{degree}")
				? words.replace("{degree}", Objects.requireNonNullElse(word("degree", sign.severity()), "")) : words;
	}

	/** Dragging is of a back foot already: only the side is news. */
	private String place(Sign sign) {
		String limb = (sign.kind() == SignKind.HIND_LIMB_DRAGGING) ? null : word("limb", sign.limb());
		String side = word("side", sign.side());
		if (limb != null && side != null) {
			return this.replies.part(Part.LIMB_AND_SIDE, limb, side);
		}
		String one = (limb != null) ? limb : side;
		return (one != null) ? this.replies.part(Part.SIDE_ALONE, one) : "";
	}

	private String onset(String seen, double minute) {
		return (minute < 1) ? this.replies.part(Part.FROM_THE_START, seen)
				: this.replies.part(Part.AFTER_MINUTES, seen, this.figures.minutes(minute));
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

	private @Nullable String minutes(WalkFacts facts) {
		if (facts.minutes() == null) {
			return null;
		}
		double low = Objects.requireNonNullElse(facts.minutesLow(), facts.minutes());
		double high = Objects.requireNonNullElse(facts.minutesHigh(), facts.minutes());
		boolean range = !facts.minutesEstimated() && high - low >= 1;
		String minutes = range ? this.figures.minutes(low, high) : this.figures.minutes(facts.minutes());
		return facts.minutesEstimated() ? this.replies.part(Part.ABOUT, minutes) : minutes;
	}

	private @Nullable String distance(WalkFacts facts) {
		return (facts.distanceMetres() != null) ? this.figures.distance(facts.distanceMetres()) : null;
	}

	private String at(String walk, @Nullable LocalTime start) {
		return (start != null) ? this.replies.part(Part.AT_TIME, walk, start.toString()) : walk;
	}

}
