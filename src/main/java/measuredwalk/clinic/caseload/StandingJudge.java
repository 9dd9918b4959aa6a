package measuredwalk.clinic.caseload;

import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import measuredwalk.household.Dog;
import measuredwalk.journal.MorningEntry;
import measuredwalk.journal.WalkEntry;
import measuredwalk.signs.Overall;
import measuredwalk.signs.Severity;
import measuredwalk.signs.Sign;
import measuredwalk.tolerance.Advice;
import measuredwalk.tolerance.Suggestion;
import org.jspecify.annotations.Nullable;

/**
 * Judges how a dog stands from its last days and today's suggestion. The rules only sort
 * a list for people to read; what must reach the clinic is an alert.
 */
final class StandingJudge {

	/** Common practice, no source. */
	private static final int RECENT_DAYS = 3;

	private static final int ANSWERS_DAYS = 14;

	private final Dog dog;

	private final List<WalkEntry> walks;

	private final List<MorningEntry> mornings;

	StandingJudge(Dog dog, List<WalkEntry> walks, List<MorningEntry> mornings) {
		this.dog = dog;
		this.walks = walks;
		this.mornings = mornings;
	}

	DogStanding judge(Suggestion suggestion) {
		LocalDate today = suggestion.date();
		List<Sign> signs = recentSigns(today);
		boolean worse = worseMorning(today);
		return new DogStanding(this.dog.id(), today, concern(suggestion.advice(), signs, worse, heardWithin(today)),
				reason(suggestion, signs, worse), suggestion.minutes(), walks(suggestion), lastHeard(), answered(today),
				expected(today));
	}

	/**
	 * With emergency signs the list shows no walk, whatever is allowed once it is seen.
	 */
	private static int walks(Suggestion suggestion) {
		return (suggestion.advice() == Advice.EMERGENCY) ? 0 : suggestion.walks();
	}

	/**
	 * Without news the model eases off by itself: that is silence, and listed as such.
	 */
	private static Concern concern(Advice advice, List<Sign> signs, boolean worse, boolean heard) {
		boolean grave = signs.stream().anyMatch((sign) -> sign.severity() == Severity.SEVERE);
		return switch (advice) {
			case EMERGENCY, CALL_CLINIC, REST -> Concern.LOOK_FIRST;
			case EASE_OFF -> grave ? Concern.LOOK_FIRST : (heard ? Concern.WATCH : Concern.STEADY);
			case USUAL -> {
				Concern shown = (worse || !signs.isEmpty()) ? Concern.WATCH : Concern.STEADY;
				yield grave ? Concern.LOOK_FIRST : shown;
			}
		};
	}

	private static String reason(Suggestion suggestion, List<Sign> signs, boolean worse) {
		List<String> parts = new ArrayList<>();
		switch (suggestion.advice()) {
			case EMERGENCY -> parts.add("emergency signs told of today");
			case CALL_CLINIC -> parts.add("asked to call the clinic today");
			case REST -> parts.add("resting after a bad morning");
			case EASE_OFF -> parts.add("walks eased off");
			case USUAL -> {
			}
		}
		if (worse && suggestion.advice() != Advice.REST) {
			parts.add("a morning worse than usual");
		}
		if (!signs.isEmpty()) {
			parts.add(named(signs) + " in the last " + RECENT_DAYS + " days");
		}
		if (parts.isEmpty()) {
			suggestion.reasons().stream().findFirst().ifPresent((first) -> parts.add(first.code().replace('-', ' ')));
		}
		return String.join("; ", parts);
	}

	private static String named(List<Sign> signs) {
		return signs.stream()
			.sorted(Comparator.comparing(StandingJudge::weight).reversed())
			.map((sign) -> sign.kind().code().replace('-', ' '))
			.distinct()
			.limit(4)
			.collect(Collectors.joining(", "));
	}

	private static int weight(Sign sign) {
		return (sign.severity() != null) ? sign.severity().ordinal() + 1 : 0;
	}

	private List<Sign> recentSigns(LocalDate today) {
		LocalDate from = today.minusDays(RECENT_DAYS - 1L);
		Stream<Sign> seen = this.walks.stream()
			.filter((walk) -> !walk.facts().date().isBefore(from))
			.flatMap((walk) -> walk.facts().signs().stream());
		Stream<Sign> inMornings = this.mornings.stream()
			.filter((morning) -> !morning.facts().date().isBefore(from))
			.flatMap((morning) -> morning.facts().signs().stream());
		return Stream.concat(seen, inMornings).filter(Sign::present).toList();
	}

	private boolean heardWithin(LocalDate today) {
		LocalDate from = today.minusDays(RECENT_DAYS - 1L);
		return this.walks.stream().anyMatch((walk) -> !walk.facts().date().isBefore(from))
				|| this.mornings.stream().anyMatch((morning) -> !morning.facts().date().isBefore(from));
	}

	private boolean worseMorning(LocalDate today) {
		return this.mornings.stream()
			.map(MorningEntry::facts)
			.anyMatch((facts) -> facts.overall() == Overall.WORSE && facts.date().isAfter(today.minusDays(2)));
	}

	private @Nullable Instant lastHeard() {
		return Stream
			.concat(this.walks.stream().map(WalkEntry::reportedAt),
					this.mornings.stream().map(MorningEntry::reportedAt))
			.filter(Objects::nonNull)
			.max(Comparator.naturalOrder())
			.orElse(null);
	}

	private int answered(LocalDate today) {
		return (int) this.mornings.stream()
			.map((morning) -> morning.facts().date())
			.filter((date) -> date.isAfter(today.minusDays(ANSWERS_DAYS)) && date.isAfter(this.dog.enrolledOn())
					&& !date.isAfter(today))
			.distinct()
			.count();
	}

	/** The first morning is the one after the day it was taken on. */
	private int expected(LocalDate today) {
		return (int) Math.min(ANSWERS_DAYS, ChronoUnit.DAYS.between(this.dog.enrolledOn(), today));
	}

}
