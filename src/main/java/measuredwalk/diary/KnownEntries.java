package measuredwalk.diary;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;

import measuredwalk.journal.WalkFacts;

/** What is known of a dog while its diary is read, row by row. */
final class KnownEntries {

	private static final double NOT_SAID = -1;

	private final Set<Object> keys = new HashSet<>();

	private final List<WalkFacts> walks = new ArrayList<>();

	/**
	 * Takes a walk in. It is known by its day, its hour and its minutes; when these are
	 * an estimate, which changes with what else is known, by its distance.
	 * @return false when it was known already
	 */
	boolean add(WalkFacts walk) {
		Double figure = walk.minutesEstimated() ? walk.distanceMetres() : walk.minutes();
		boolean fresh = this.keys.add(List.of(walk.date(), Objects.requireNonNullElse(walk.start(), LocalTime.NOON),
				walk.minutesEstimated(), Objects.requireNonNullElse(figure, NOT_SAID)));
		if (fresh) {
			this.walks.add(walk);
		}
		return fresh;
	}

	/**
	 * Takes a morning in.
	 * @return false when it was known already
	 */
	boolean add(LocalDate morning) {
		return this.keys.add(morning);
	}

	List<WalkFacts> walks() {
		return List.copyOf(this.walks);
	}

}
