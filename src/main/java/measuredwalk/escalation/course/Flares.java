package measuredwalk.escalation.course;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;

import org.jspecify.annotations.Nullable;

/**
 * Counts flares: spells that last into a further day, in which every day told of was
 * worse than the dog's own usual (worse for 24 hours or more: H; Thomas 2021,
 * Osteoarthritis Cartilage). The usual is the median grade of the days told of.
 */
final class Flares {

	/** A longer silence ends a spell. Ours, no source. */
	private static final int LONGEST_SILENCE_DAYS = 3;

	private final int usual;

	private int flares;

	private @Nullable LocalDate last;

	private boolean counted;

	private Flares(int usual) {
		this.usual = usual;
	}

	static int in(List<CourseDay> days) {
		List<CourseDay> told = days.stream().filter(CourseDay::told).toList();
		Flares count = new Flares(told.stream()
			.map(CourseDay::grade)
			.sorted()
			.skip(Math.max(0, (told.size() - 1) / 2))
			.findFirst()
			.orElse(0));
		told.forEach(count::add);
		return count.flares;
	}

	private void add(CourseDay day) {
		boolean worse = day.saidWorse() || day.grade() > this.usual;
		boolean goesOn = this.last != null && ChronoUnit.DAYS.between(this.last, day.date()) <= LONGEST_SILENCE_DAYS;
		if (worse && goesOn && !this.counted) {
			this.flares++;
		}
		this.counted = worse && goesOn;
		this.last = worse ? day.date() : null;
	}

}
