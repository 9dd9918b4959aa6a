package measuredwalk.clinic.audit;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

import measuredwalk.household.Dog;
import measuredwalk.journal.MorningEntry;
import measuredwalk.journal.WalkEntry;
import measuredwalk.journal.WalkFacts;
import measuredwalk.tolerance.Suggestion;

/** Counts what a dog adds to the audit. */
final class DogCount {

	/** Whole minutes are told: half a minute beside the band is still in it. */
	private static final double ROUNDING_MINUTES = 0.5;

	private DogCount() {
	}

	/**
	 * Counts.
	 * @param dog the dog
	 * @param today the last day
	 * @param suggested the suggestions of the days
	 * @param walks all walks that count
	 * @param mornings all mornings that count
	 * @param flares the number of flares
	 */
	static DogAudit of(Dog dog, LocalDate today, List<Suggestion> suggested, List<WalkEntry> walks,
			List<MorningEntry> mornings, int flares) {
		LocalDate first = today.minusDays(Audits.DAYS - 1L);
		LocalDate from = dog.enrolledOn().isAfter(first) ? dog.enrolledOn() : first;
		Map<LocalDate, Suggestion> byDay = suggested.stream()
			.collect(Collectors.toMap(Suggestion::date, Function.identity()));
		List<WalkFacts> told = walks.stream()
			.map(WalkEntry::facts)
			.filter((walk) -> walk.minutes() != null && !walk.date().isBefore(from) && byDay.containsKey(walk.date()))
			.toList();
		long inBand = told.stream().filter((walk) -> inBand(walk, byDay.get(walk.date()))).count();
		LocalDate firstAsked = from.isAfter(dog.enrolledOn()) ? from : dog.enrolledOn().plusDays(1);
		long answered = mornings.stream()
			.map((morning) -> morning.facts().date())
			.filter((date) -> !date.isBefore(firstAsked) && !date.isAfter(today))
			.distinct()
			.count();
		return new DogAudit(dog.id(), (int) ChronoUnit.DAYS.between(from, today) + 1, told.size(), (int) inBand, flares,
				(int) answered, (int) ChronoUnit.DAYS.between(firstAsked, today) + 1);
	}

	private static boolean inBand(WalkFacts walk, Suggestion suggestion) {
		double minutes = java.util.Objects.requireNonNull(walk.minutes());
		return minutes >= suggestion.minutesLow() - ROUNDING_MINUTES
				&& minutes <= suggestion.minutesHigh() + ROUNDING_MINUTES;
	}

}
