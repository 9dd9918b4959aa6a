package measuredwalk.escalation.course;

import java.time.Clock;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;

import measuredwalk.escalation.AlertLevel;
import measuredwalk.escalation.Alerts;
import measuredwalk.escalation.ClinicSettings;
import measuredwalk.household.Dog;
import measuredwalk.household.Households;
import measuredwalk.journal.Journal;
import measuredwalk.journal.MorningLogged;
import measuredwalk.journal.WalkLogged;
import measuredwalk.suggestions.Suggestions;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * Looks at a dog's course whenever something is told, in the same transaction: what was
 * told and the review that follows from it are stored together or not at all.
 */
@Service
public class CourseWatch {

	/** As far back as any rule looks: the burden's baseline is the longest. */
	private static final int DAYS = 365;

	private static final Logger log = LoggerFactory.getLogger(CourseWatch.class);

	private final Households households;

	private final Journal journal;

	private final Suggestions suggestions;

	private final Alerts alerts;

	private final Episodes episodes;

	private final ClinicSettings settings;

	private final Clock clock;

	CourseWatch(Households households, Journal journal, Suggestions suggestions, Alerts alerts, Episodes episodes,
			ClinicSettings settings, Clock clock) {
		this.settings = settings;
		this.households = households;
		this.journal = journal;
		this.suggestions = suggestions;
		this.alerts = alerts;
		this.episodes = episodes;
		this.clock = clock;
	}

	@EventListener
	@Transactional
	public void walk(WalkLogged logged) {
		look(logged.dogId());
	}

	@EventListener
	@Transactional
	public void morning(MorningLogged logged) {
		look(logged.dogId());
	}

	/**
	 * Looks at a dog's course and raises what the rules find.
	 * @param dogId the dog; nothing happens when there is no such dog
	 */
	@Transactional
	public void look(UUID dogId) {
		this.households.dog(dogId).ifPresent((dog) -> look(dog, course(dog)));
	}

	/**
	 * Looks at a dog's course and at what the model believed on each day of it. That is
	 * slower and changes from day to day only.
	 * @param dogId the dog; nothing happens when there is no such dog
	 */
	@Transactional
	public void lookWithBeliefs(UUID dogId) {
		this.households.dog(dogId).ifPresent((dog) -> look(dog, course(dog).withBeliefs(beliefs(dog))));
	}

	private List<BeliefDay> beliefs(Dog dog) {
		return this.suggestions.days(dog, medicineChangedOn(dog))
			.stream()
			.map((each) -> new BeliefDay(each.date(), each.toleranceMedian()))
			.toList();
	}

	private DogCourse course(Dog dog) {
		LocalDate today = today(dog);
		return DogCourse.of(this.journal.walks(dog.id()), this.journal.mornings(dog.id()), first(dog, today), today)
			.withMedicineChangedOn(medicineChangedOn(dog))
			.withDesign(this.settings.reviewDesign());
	}

	private LocalDate today(Dog dog) {
		return this.clock.instant().atZone(dog.household().timeZone()).toLocalDate();
	}

	private void look(Dog dog, DogCourse course) {
		LocalDate today = today(dog);
		for (CourseRule rule : CourseRules.all()) {
			found(rule, course, dog).filter((finding) -> this.episodes.news(dog.id(), rule, finding, today))
				.ifPresent((finding) -> this.alerts.raise(dog.id(), AlertLevel.REVIEW, finding.reason(),
						List.copyOf(finding.evidence())));
		}
	}

	private static LocalDate first(Dog dog, LocalDate today) {
		LocalDate earliest = today.minusDays(DAYS);
		return dog.enrolledOn().isAfter(earliest) ? dog.enrolledOn() : earliest;
	}

	/** What it was on already when it was taken on is no change. */
	private LocalDate medicineChangedOn(Dog dog) {
		return this.households.medicationsOf(dog.id())
			.stream()
			.flatMap((each) -> Stream.of(each.stoppedOn(), each.knownAtEnrolment() ? null : each.startedOn()))
			.filter(Objects::nonNull)
			.max(Comparator.naturalOrder())
			.orElse(dog.enrolledOn());
	}

	/** A rule that breaks must not lose the owner's words: they are kept without it. */
	private static Optional<Finding> found(CourseRule rule, DogCourse course, Dog dog) {
		try {
			return rule.finds().apply(course);
		}
		catch (RuntimeException ex) {
			log.error("The rule {} broke on the course of dog {}; all others were looked at.", rule.name(), dog.id(),
					ex);
			return Optional.empty();
		}
	}

}
