package measuredwalk.tolerance.simulation;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

import measuredwalk.tolerance.ToleranceEvent;

/** Hands answers on when they come: at once, or some days late. */
final class Answers {

	private record Waiting(int untilDay, ToleranceEvent event) {
	}

	private final int lateDays;

	private final Consumer<ToleranceEvent> listener;

	private final List<Waiting> waiting = new ArrayList<>();

	private int day;

	Answers(int lateDays, Consumer<ToleranceEvent> listener) {
		this.lateDays = lateDays;
		this.listener = listener;
	}

	void beginDay(int today, List<ToleranceEvent> clinicNotes) {
		this.day = today;
		this.waiting.stream().filter((late) -> late.untilDay() <= today).map(Waiting::event).forEach(this.listener);
		this.waiting.removeIf((late) -> late.untilDay() <= today);
		clinicNotes.forEach(this.listener);
	}

	void tell(ToleranceEvent event, boolean late) {
		if (late) {
			this.waiting.add(new Waiting(this.day + this.lateDays, event));
		}
		else {
			this.listener.accept(event);
		}
	}

}
