package measuredwalk.suggestions;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

import measuredwalk.household.Dog;
import measuredwalk.household.Medication;
import measuredwalk.household.Plan;
import measuredwalk.journal.MorningEntry;
import measuredwalk.journal.WalkEntry;
import measuredwalk.journal.WalkFacts;
import measuredwalk.tolerance.DosingSettings;
import measuredwalk.tolerance.LoadFactors;
import measuredwalk.tolerance.ToleranceEvent;
import measuredwalk.tolerance.ToleranceEvent.DogEnrolled;
import measuredwalk.tolerance.ToleranceEvent.MedicationChanged;
import measuredwalk.tolerance.ToleranceEvent.MorningSeen;
import measuredwalk.tolerance.ToleranceEvent.PlanChanged;
import measuredwalk.tolerance.ToleranceEvent.WalkTaken;
import measuredwalk.tolerance.WalkPlan;
import org.jspecify.annotations.Nullable;

/** What is known of a dog, put into the order in which the tolerance model takes it. */
final class DogHistory {

	/** An answer that comes later than this counts less: clinical rules, Stone 2003. */
	private static final Duration LATE_AFTER = Duration.ofHours(24);

	private final Dog dog;

	private final ZoneId zone;

	private final LoadFactors loads;

	/**
	 * A dog's history.
	 * @param dog the dog
	 * @param rule the dosing rule, by which harder walks count for more
	 */
	DogHistory(Dog dog, DosingSettings rule) {
		this.dog = dog;
		this.loads = LoadFactors.of(rule);
		this.zone = dog.household().timeZone();
	}

	List<ToleranceEvent> events(List<Plan> plans, List<Medication> medications, List<WalkEntry> walks,
			List<MorningEntry> mornings) {
		List<ToleranceEvent> events = new ArrayList<>();
		plans.stream().skip(1).map((plan) -> new PlanChanged(plan.from(), walkPlan(plan))).forEach(events::add);
		medications.stream().flatMap(DogHistory::changes).forEach(events::add);
		mornings.stream().map(this::morning).forEach(events::add);
		walks.stream()
			.filter((walk) -> walk.facts().minutes() != null)
			.map(this::walk)
			.sorted(Comparator.comparing(WalkTaken::date)
				.thenComparing((walk) -> Objects.requireNonNullElse(walk.time(), LocalTime.NOON)))
			.forEach(events::add);
		events.sort(Comparator.comparing(ToleranceEvent::date));
		events.add(0, enrolled(plans.get(0), events));
		return List.copyOf(events);
	}

	/** Somebody may tell of a walk from before the dog was taken on. */
	private DogEnrolled enrolled(Plan plan, List<ToleranceEvent> later) {
		LocalDate first = Stream.concat(Stream.of(this.dog.enrolledOn()), later.stream().map(ToleranceEvent::date))
			.min(Comparator.naturalOrder())
			.orElseThrow();
		return new DogEnrolled(first, walkPlan(plan), this.dog.weightKg(), this.dog.ageYears(), this.dog.fullyGrown(),
				this.dog.surgeryDate());
	}

	private static WalkPlan walkPlan(Plan plan) {
		return new WalkPlan(plan.planMinutes(), plan.walksPerDay(), plan.minMinutes(), plan.maxMinutes());
	}

	private static Stream<ToleranceEvent> changes(Medication medication) {
		List<ToleranceEvent> changes = new ArrayList<>();
		if (!medication.knownAtEnrolment()) {
			changes.add(
					new MedicationChanged(medication.startedOn(), MedicationChanged.Change.STARTED, medication.kind()));
		}
		LocalDate stoppedOn = medication.stoppedOn();
		if (stoppedOn != null) {
			changes.add(new MedicationChanged(stoppedOn, MedicationChanged.Change.STOPPED, medication.kind()));
		}
		return changes.stream();
	}

	private WalkTaken walk(WalkEntry entry) {
		WalkFacts facts = entry.facts();
		double minutes = Objects.requireNonNull(facts.minutes());
		double low = Objects.requireNonNullElse(facts.minutesLow(), minutes);
		double high = Objects.requireNonNullElse(facts.minutesHigh(), minutes);
		return new WalkTaken(facts.date(), time(entry, minutes), minutes, Math.min(low, minutes),
				Math.max(high, minutes), facts.distanceMetres(), facts.signs(), late(entry.reportedAt(), facts.date()),
				this.loads.load(facts.loads()));
	}

	/**
	 * A walk that was told of without its hour is taken to have ended when it was told.
	 */
	private @Nullable LocalTime time(WalkEntry entry, double minutes) {
		LocalTime start = entry.facts().start();
		if (start != null) {
			return start;
		}
		var told = entry.reportedAt().atZone(this.zone).minusSeconds(Math.round(minutes * 60));
		return told.toLocalDate().equals(entry.facts().date()) ? told.toLocalTime() : null;
	}

	private MorningSeen morning(MorningEntry entry) {
		return new MorningSeen(entry.facts().date(), entry.facts().signs(), entry.facts().stiffMinutes(),
				entry.facts().overall(), late(entry.reportedAt(), entry.facts().date()));
	}

	private boolean late(Instant reportedAt, LocalDate date) {
		Instant dayEnd = date.plusDays(1).atStartOfDay(this.zone).toInstant();
		return Duration.between(dayEnd, reportedAt).compareTo(LATE_AFTER) > 0;
	}

}
