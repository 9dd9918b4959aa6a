package measuredwalk.reading;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;

import measuredwalk.reading.context.Annotation;
import org.jspecify.annotations.Nullable;

/** Drops a distance that no dog walks in that time, and dates the walks. */
final class Plausible {

	/**
	 * Outside these speeds in km/h the distance is dropped and the minutes kept (ours).
	 */
	private static final double SLOWEST = 0.3;

	private static final double FASTEST = 9;

	private Plausible() {
	}

	static List<WalkTold> walks(List<WalkTold> told, Annotation annotation, LocalDateTime now) {
		LocalDate date = told.isEmpty() ? null : DayReader.read(annotation, now);
		return told.stream().map((walk) -> walk(walk, date)).toList();
	}

	private static WalkTold walk(WalkTold walk, @Nullable LocalDate date) {
		double speed = Doubts.kilometresPerHour(walk);
		Double metres = (speed < SLOWEST || speed > FASTEST) ? null : walk.distanceMetres();
		return new WalkTold(walk.minutes(), walk.minutesLow(), walk.minutesHigh(), metres, walk.start(), date,
				walk.relative());
	}

}
