package measuredwalk.care;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;

import measuredwalk.household.Dog;
import measuredwalk.journal.Journal;
import measuredwalk.journal.WalkEntry;
import measuredwalk.journal.WalkFacts;
import measuredwalk.reading.RelativeAmount;
import measuredwalk.reading.WalkTold;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/**
 * Turns what was told of a walk into minutes: as told, or against another walk, or from
 * the distance by the dog's own pace, marked as an estimate.
 */
@Component
class WalkAmount {

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

	WalkFacts facts(Turn turn, WalkTold told) {
		WalkFacts walk = new WalkFacts(Objects.requireNonNullElse(told.date(), turn.today()), told.start(),
				told.minutes(), told.minutesLow(), told.minutesHigh(), plausibleDistance(told), false, null, List.of(),
				List.of());
		if (told.minutes() != null) {
			return walk;
		}
		RelativeAmount relative = told.relative();
		if (relative != null) {
			return estimated(walk, relativeMinutes(turn.dog(), relative), 0);
		}
		Double metres = told.distanceMetres();
		if (metres != null) {
			double pace = pace(turn.dog());
			double spread = metres / SLOW_METRES_PER_MINUTE - metres / QUICK_METRES_PER_MINUTE;
			return estimated(walk, metres / pace, spread / 2);
		}
		return walk;
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

	private double relativeMinutes(Dog dog, RelativeAmount relative) {
		double base = (relative.of() == RelativeAmount.Base.PREVIOUS) ? previous(dog) : usual(dog);
		return base * Objects.requireNonNullElse(relative.factor(), 1.0)
				+ Objects.requireNonNullElse(relative.offsetMinutes(), 0.0);
	}

	private double previous(Dog dog) {
		List<Double> minutes = toldMinutes(dog);
		return minutes.isEmpty() ? dog.plan().planMinutes() : minutes.get(minutes.size() - 1);
	}

	private double usual(Dog dog) {
		List<Double> minutes = toldMinutes(dog);
		List<Double> last = minutes.subList(Math.max(0, minutes.size() - WALKS_FOR_USUAL), minutes.size());
		return last.isEmpty() ? dog.plan().planMinutes() : median(last);
	}

	private List<Double> toldMinutes(Dog dog) {
		return this.journal.walks(dog.id())
			.stream()
			.map((walk) -> walk.facts().minutes())
			.filter(Objects::nonNull)
			.map(Objects::requireNonNull)
			.toList();
	}

	private double pace(Dog dog) {
		List<Double> paces = this.journal.walks(dog.id())
			.stream()
			.map(WalkEntry::facts)
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
