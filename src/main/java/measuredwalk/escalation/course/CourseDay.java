package measuredwalk.escalation.course;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

import measuredwalk.escalation.Evidence;
import measuredwalk.journal.MorningEntry;
import measuredwalk.journal.Said;
import measuredwalk.journal.WalkEntry;
import measuredwalk.signs.Overall;
import measuredwalk.signs.Sign;
import measuredwalk.signs.SignKind;
import org.jspecify.annotations.Nullable;

/**
 * What was told of one day.
 *
 * @param date the day, in the household's zone
 * @param walks the walks that were told of
 * @param morning the morning, or null when nothing was told of it
 */
record CourseDay(LocalDate date, List<WalkEntry> walks, @Nullable MorningEntry morning) {

	CourseDay {
		walks = List.copyOf(walks);
	}

	boolean told() {
		return this.morning != null || !this.walks.isEmpty();
	}

	private Stream<Sign> signs() {
		Stream<Sign> ofWalks = this.walks.stream().flatMap((walk) -> walk.facts().signs().stream());
		Stream<Sign> ofMorning = (this.morning != null) ? this.morning.facts().signs().stream() : Stream.empty();
		return Stream.concat(ofWalks, ofMorning).filter(Sign::present);
	}

	/** The worst sign of moving: 0 none, 1 mild, 2 clear, 3 severe. */
	int grade() {
		int worst = signs().filter(SignGrade::ofMoving).mapToInt(SignGrade::of).max().orElse(0);
		return saidWorse() ? Math.max(1, worst) : worst;
	}

	int lameness() {
		return signs().filter((sign) -> sign.kind() == SignKind.LAMENESS || sign.kind() == SignKind.NON_WEIGHT_BEARING)
			.mapToInt(SignGrade::of)
			.max()
			.orElse(0);
	}

	/** Somebody said that the dog was worse than its own usual. */
	boolean saidWorse() {
		return this.walks.stream().anyMatch((walk) -> walk.facts().overall() == Overall.WORSE)
				|| (this.morning != null && this.morning.facts().overall() == Overall.WORSE);
	}

	/** A morning that was said to be worse than usual, or with clear signs. */
	boolean badMorning() {
		if (this.morning == null) {
			return false;
		}
		boolean clearSigns = this.morning.facts()
			.signs()
			.stream()
			.anyMatch((sign) -> sign.present() && SignGrade.ofMoving(sign) && SignGrade.of(sign) >= 2);
		return clearSigns || this.morning.facts().overall() == Overall.WORSE;
	}

	Optional<Double> stiffMinutes() {
		return Optional.ofNullable(this.morning).map((entry) -> entry.facts().stiffMinutes());
	}

	/** Minutes of all walks of the day. */
	double minutes() {
		return this.walks.stream()
			.map((walk) -> walk.facts().minutes())
			.filter(Objects::nonNull)
			.mapToDouble(Double::doubleValue)
			.sum();
	}

	List<Instant> toldAt() {
		List<Instant> times = new ArrayList<>(this.walks.stream().map(WalkEntry::reportedAt).toList());
		if (this.morning != null) {
			times.add(this.morning.reportedAt());
		}
		return times.stream().sorted().toList();
	}

	List<Evidence> evidence() {
		List<Said> said = new ArrayList<>(this.walks.stream().flatMap((walk) -> walk.said().stream()).toList());
		if (this.morning != null) {
			said.addAll(this.morning.said());
		}
		return said.stream()
			.sorted(java.util.Comparator.comparing(Said::at))
			.map((each) -> new Evidence(each.text(), each.at(), each.by()))
			.distinct()
			.toList();
	}

}
