package measuredwalk.tolerance.simulation;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

import measuredwalk.tolerance.Suggestion;
import measuredwalk.tolerance.ToleranceEvent;
import measuredwalk.tolerance.ToleranceEvent.DogEnrolled;
import measuredwalk.tolerance.ToleranceModel;

/** The project's own model, through the face that the journal uses. */
final class ModelPolicy implements Policy {

	private final ToleranceModel model = new ToleranceModel();

	@Override
	public String name() {
		return "model";
	}

	@Override
	public PolicyCourse enrol(DogEnrolled dog, Luck luck) {
		List<ToleranceEvent> history = new ArrayList<>(List.of(dog));
		return new PolicyCourse() {

			@Override
			public void accept(ToleranceEvent event) {
				JournalOrder.insert(history, event);
			}

			@Override
			public Dose suggest(LocalDate date, Insight insight) {
				return dose(ModelPolicy.this.model.suggest(history, date));
			}

		};
	}

	static Dose dose(Suggestion today) {
		return new Dose(today.walks(), today.minutes(), today.chanceOfTrouble(), today.toleranceLow(),
				today.toleranceMedian(), today.toleranceHigh());
	}

}
