package measuredwalk.amounts;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.function.Supplier;

import measuredwalk.household.Dog;
import measuredwalk.journal.Journal;
import measuredwalk.journal.WalkEntry;
import measuredwalk.journal.WalkFacts;
import measuredwalk.reading.RelativeAmount;
import measuredwalk.reading.WalkTold;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;

/**
 * Turns what was told of a walk into minutes: as told, or against another walk, or from
 * the distance by the dog's own pace, marked as an estimate.
 */
@Service
public class WalkAmount {

	/**
	 * Metres a minute of a walking Labrador, middle of 2.2 to 3.2 km/h: Light 2010 (AJVR
	 * 71:997).
	 */
	private static final double USUAL_METRES_PER_MINUTE = 45;

	/** The slow and the quick end of that range, for how far off an estimate may be. */
	private static final double SLOW_METRES_PER_MINUTE = 37;

	private static final double QUICK_METRES_PER_MINUTE = 53;

	/**
	 * Slower than 0.3 or quicker than 9 km/h is no dog's walk: the distance is dropped.
	 */
	private static final double LEAST_METRES_PER_MINUTE = 5;

	private static final double MOST_METRES_PER_MINUTE = 150;

	/** So many walks make a habit: common practice, no source. */
	private static final int WALKS_FOR_USUAL = 14;

	private final Journal journal;

	WalkAmount(Journal journal) {
		this.journal = journal;
	}

	/**
	 * What is known of a walk that was told of, but for its signs.
	 * @param dog the dog
	 * @param day the day of the walk, unless another one was told
	 * @param told what was told
	 * @return the facts; without minutes when nothing was told of how much it was
	 */
	public WalkFacts facts(Dog dog, LocalDate day, WalkTold told) {
		return facts(dog, day, told, () -> this.journal.walks(dog.id()).stream().map(WalkEntry::facts).toList());
	}

	/**
	 * The same, against walks that need not be in the journal.
	 * @param dog the dog
	 * @param day the day of the walk, unless another one was told
	 * @param told what was told
	 * @param walks all walks known of the dog; asked for only when it takes them
	 * @return the facts; without minutes when nothing was told of how much it was
	 */
	public static WalkFacts facts(Dog dog, LocalDate day, WalkTold told, Supplier<List<WalkFacts>> walks) {
		WalkFacts walk = new WalkFacts(Objects.requireNonNullElse(told.date(), day), told.start(), told.minutes(),
				told.minutesLow(), told.minutesHigh(), plausibleDistance(told), false, null, List.of(), List.of());
		if (told.minutes() != null) {
			return walk;
		}
		RelativeAmount relative = told.relative();
		if (relative != null) {
			return estimated(walk, relativeMinutes(dog, relative, before(walk, walks.get())), 0);
		}
		Double metres = told.distanceMetres();
		if (metres != null) {
			double spread = metres / SLOW_METRES_PER_MINUTE - metres / QUICK_METRES_PER_MINUTE;
			return estimated(walk, metres / pace(walks.get()), spread / 2);
		}
		return walk;
	}

	/** The minutes of the walks until that day, the last one last. */
	private static List<Double> before(WalkFacts walk, List<WalkFacts> walks) {
		return walks.stream()
			.filter((each) -> !each.date().isAfter(walk.date()))
			.sorted(Comparator.comparing(WalkFacts::date))
			.map(WalkFacts::minutes)
			.filter(Objects::nonNull)
			.map(Objects::requireNonNull)
			.toList();
	}

	private static @Nullable Double plausibleDistance(WalkTold told) {
		Double metres = told.distanceMetres();
		if (metres == null || told.minutes() == null) {
			return metres;
		}
		double pace = metres / told.minutes();
		return (pace >= LEAST_METRES_PER_MINUTE && pace <= MOST_METRES_PER_MINUTE) ? metres : null;
	}

	private static WalkFacts estimated(WalkFacts walk, double minutes, double spread) {
		double rounded = Math.max(1, Math.round(minutes));
		return new WalkFacts(walk.date(), walk.start(), rounded, Math.max(1, Math.floor(minutes - spread)),
				Math.max(1, Math.ceil(minutes + spread)), walk.distanceMetres(), true, null, List.of(), List.of(),
				walk.loads());
	}

	private static double relativeMinutes(Dog dog, RelativeAmount relative, List<Double> before) {
		double base = before.isEmpty() ? dog.plan().planMinutes()
				: (relative.of() == RelativeAmount.Base.PREVIOUS) ? before.get(before.size() - 1) : usual(before);
		return base * Objects.requireNonNullElse(relative.factor(), 1.0)
				+ Objects.requireNonNullElse(relative.offsetMinutes(), 0.0);
	}

	private static double usual(List<Double> minutes) {
		return median(minutes.subList(Math.max(0, minutes.size() - WALKS_FOR_USUAL), minutes.size()));
	}

	private static double pace(List<WalkFacts> walks) {
		List<Double> paces = walks.stream()
			.filter((facts) -> facts.minutes() != null && facts.distanceMetres() != null && !facts.minutesEstimated())
			.map((facts) -> Objects.requireNonNull(facts.distanceMetres()) / Objects.requireNonNull(facts.minutes()))
			.toList();
		return paces.isEmpty() ? USUAL_METRES_PER_MINUTE : median(paces);
	}

	private static double median(List<Double> figures) {
		List<Double> sorted = figures.stream().sorted(Comparator.naturalOrder()).toList();
		int middle = sorted.size() / 2;
		return (sorted.size() % 2 == 1) ? sorted.get(middle) : (sorted.get(middle - 1) + sorted.get(middle)) / 2;
	}

}
