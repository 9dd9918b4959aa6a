package measuredwalk.tolerance.simulation;

import java.util.Comparator;
import java.util.List;

import measuredwalk.tolerance.ToleranceEvent;
import measuredwalk.tolerance.ToleranceEvent.MorningSeen;
import measuredwalk.tolerance.ToleranceEvent.WalkTaken;

/**
 * Puts a late answer into the journal where it belongs: by day, the morning before the
 * walks.
 */
final class JournalOrder {

	private static final Comparator<ToleranceEvent> BY_DAY = Comparator.comparing(ToleranceEvent::date)
		.thenComparing(JournalOrder::partOfDay);

	private JournalOrder() {
	}

	/**
	 * Inserts an event after those that it does not come before.
	 * @param history in order
	 * @param event the event
	 * @return where it was put
	 */
	static int insert(List<ToleranceEvent> history, ToleranceEvent event) {
		int place = history.size();
		while (place > 1 && BY_DAY.compare(history.get(place - 1), event) > 0) {
			place--;
		}
		history.add(place, event);
		return place;
	}

	private static int partOfDay(ToleranceEvent event) {
		return (event instanceof WalkTaken) ? 2 : (event instanceof MorningSeen) ? 1 : 0;
	}

}
