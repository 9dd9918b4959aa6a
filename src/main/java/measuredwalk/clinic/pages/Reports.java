package measuredwalk.clinic.pages;

import java.time.Clock;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;

import measuredwalk.escalation.Alert;
import measuredwalk.escalation.Alerts;
import measuredwalk.household.Dog;
import measuredwalk.household.Households;
import measuredwalk.household.Medication;
import measuredwalk.journal.Journal;
import measuredwalk.journal.MorningEntry;
import measuredwalk.journal.MorningFacts;
import measuredwalk.journal.WalkEntry;
import measuredwalk.pictures.Picture;
import measuredwalk.suggestions.Suggestions;
import measuredwalk.tolerance.Advice;
import measuredwalk.tolerance.Calibration;
import measuredwalk.tolerance.Suggestion;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** Puts together what a re-check is to know of the weeks since the last. */
@Component
class Reports {

	private static final int DAYS_OF_A_WEEK = 7;

	/** Caps that keep the report on one page. */
	private static final int MOST_ALERTS = 3;

	private static final int MOST_CHANGES = 4;

	private static final int MOST_MEDICINES = 6;

	private static final int MOST_SIGNS = 8;

	private static final int PICTURE_WIDTH = 720;

	private final Households households;

	private final Journal journal;

	private final Suggestions suggestions;

	private final Alerts alerts;

	private final Course course;

	private final Clock clock;

	Reports(Households households, Journal journal, Suggestions suggestions, Alerts alerts, Course course,
			Clock clock) {
		this.households = households;
		this.journal = journal;
		this.suggestions = suggestions;
		this.alerts = alerts;
		this.course = course;
		this.clock = clock;
	}

	/** A report with its picture, to be painted where SVG cannot be shown. */
	record WithPicture(Report report, Picture picture) {
	}

	@Transactional(readOnly = true)
	public WithPicture of(Dog dog, int weeks) {
		LocalDate today = this.clock.instant().atZone(dog.household().timeZone()).toLocalDate();
		LocalDate from = today.minusDays((long) weeks * DAYS_OF_A_WEEK - 1);
		List<CourseDay> days = this.course.lastDays(dog, today, weeks * DAYS_OF_A_WEEK);
		Picture picture = CoursePicture.of(dog.name(), days, PICTURE_WIDTH);
		List<WalkEntry> walks = this.journal.walks(dog.id());
		List<MorningEntry> mornings = this.journal.mornings(dog.id());
		List<MorningFacts> morningFacts = mornings.stream().map(MorningEntry::facts).toList();
		List<Alert> raised = raised(dog, from);
		Suggestion now = this.suggestions.today(dog);
		return new WithPicture(new Report(dog.id(), dog.name(), DogHead.about(dog),
				Wording.day(days.isEmpty() ? today : days.get(0).date()) + " to " + Wording.day(today) + " "
						+ today.getYear(),
				Wording.dose(dog.plan().walksPerDay(), dog.plan().planMinutes()) + ", limits "
						+ Wording.figure(dog.plan().minMinutes()) + " to " + Wording.figure(dog.plan().maxMinutes()),
				dose(days, now), tolerance(days, now), answers(dog, morningFacts, from, today),
				joined(ReportWords.signs(walks, mornings, from, MOST_SIGNS)),
				ReportWeek.of(days, morningFacts, today, weeks), picture.svg(), picture.summary(), medicines(dog),
				changes(days),
				raised.stream()
					.limit(MOST_ALERTS)
					.map((alert) -> ReportAlert.of(alert, dog.household().timeZone()))
					.toList(),
				Math.max(0, raised.size() - MOST_ALERTS),
				ReportWords.of(walks, mornings, from, today, dog.household().timeZone()), ReportWords.RULE,
				cautions(this.suggestions.calibration(dog))), picture);
	}

	private List<Alert> raised(Dog dog, LocalDate from) {
		return this.alerts.of(dog.id())
			.stream()
			.filter((alert) -> !alert.raisedAt().atZone(dog.household().timeZone()).toLocalDate().isBefore(from))
			.toList();
	}

	/** What was suggested this morning: later in the day nothing may be left of it. */
	private static String dose(List<CourseDay> days, Suggestion now) {
		Suggestion morning = days.isEmpty() ? null : days.get(days.size() - 1).suggestion();
		Suggestion shown = (morning != null) ? morning : now;
		String dose = Wording.dose(shown.walks(), shown.minutes());
		return (now.advice() == Advice.USUAL) ? dose : dose + "; " + Wording.words(now.advice());
	}

	private static String joined(List<String> signs) {
		return signs.isEmpty() ? "none" : String.join(", ", signs);
	}

	private static String tolerance(List<CourseDay> days, Suggestion now) {
		String start = days.stream()
			.map(CourseDay::suggestion)
			.filter(Objects::nonNull)
			.findFirst()
			.map((first) -> "; at the start " + interval(first))
			.orElse("");
		return interval(now) + start;
	}

	private static String interval(Suggestion suggestion) {
		return Math.round(suggestion.toleranceMedian()) + " min (80 % interval " + Math.round(suggestion.toleranceLow())
				+ " to " + Math.round(suggestion.toleranceHigh()) + ")";
	}

	/** The first morning asked about is the one after the day it was taken on. */
	private static String answers(Dog dog, List<MorningFacts> mornings, LocalDate from, LocalDate today) {
		LocalDate first = from.isAfter(dog.enrolledOn()) ? from : dog.enrolledOn().plusDays(1);
		long expected = Math.max(0, ChronoUnit.DAYS.between(first, today) + 1);
		long answered = mornings.stream().filter((each) -> !each.date().isBefore(first)).count();
		return (expected == 0) ? "none was due"
				: answered + " of " + expected + " mornings (" + Math.round(100.0 * answered / expected) + " %)";
	}

	private List<String> medicines(Dog dog) {
		return this.households.medicationsOf(dog.id())
			.stream()
			.sorted(Comparator.comparing((Medication each) -> each.stoppedOn() != null)
				.thenComparing(Medication::startedOn, Comparator.reverseOrder()))
			.limit(MOST_MEDICINES)
			.map(Reports::words)
			.toList();
	}

	private static String words(Medication medicine) {
		String from = medicine.knownAtEnrolment() ? "given when taken on"
				: "from " + Wording.shortDay(medicine.startedOn());
		String to = (medicine.stoppedOn() != null) ? ", stopped " + Wording.shortDay(medicine.stoppedOn()) : "";
		return medicine.kind() + ": " + from + to;
	}

	private static List<String> changes(List<CourseDay> days) {
		List<String> all = new ArrayList<>();
		days.forEach((day) -> day.changes()
			.stream()
			.filter((change) -> change.kind() == measuredwalk.pictures.PictureDay.ChangeKind.PLAN)
			.forEach((change) -> all.add(Wording.shortDay(day.date()) + ": " + change.words())));
		return all.subList(Math.max(0, all.size() - MOST_CHANGES), all.size());
	}

	private static List<String> cautions(Calibration calibration) {
		List<String> cautions = new ArrayList<>();
		cautions.add("All signs and minutes are what people at home told by chat; nobody measured them.");
		cautions
			.add("The tolerance is a model's belief, not a measurement: an interval holds the true one in about 80 of"
					+ " 100 cases only if the model fits this dog.");
		cautions.add("No trial has tested a walking dose in dogs with arthritis; steps and limits are defaults that the"
				+ " clinic may change. The report diagnoses nothing.");
		if (calibration.isEnough()) {
			double expected = calibration.rows().stream().mapToDouble(Calibration.Row::expected).sum();
			int seen = calibration.rows().stream().mapToInt(Calibration.Row::seen).sum();
			cautions.add("Signs expected by the model on " + calibration.walks() + " walks: " + Wording.figure(expected)
					+ "; seen: " + seen + ".");
		}
		else {
			cautions
				.add("Only " + calibration.walks() + " walks are known; the model's chances cannot be checked against"
						+ " fewer than " + Calibration.ENOUGH_WALKS + ".");
		}
		return cautions;
	}

}
