package measuredwalk.tolerance.simulation;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

import measuredwalk.tolerance.Suggestion;
import measuredwalk.tolerance.ToleranceCourse;
import measuredwalk.tolerance.ToleranceEvent;
import measuredwalk.tolerance.ToleranceEvent.DogEnrolled;
import measuredwalk.tolerance.ToleranceModel;
import measuredwalk.tolerance.ToleranceSettings;

/** The project's own model, followed day by day; a late answer replays the journal. */
final class ModelPolicy implements Policy {

	private final String name;

	private final ToleranceModel model;

	ModelPolicy() {
		this("model", ToleranceSettings.standard());
	}

	/**
	 * The model with other constants, for tuning.
	 * @param name its name in the table
	 * @param settings the constants
	 */
	ModelPolicy(String name, ToleranceSettings settings) {
		this.name = name;
		this.model = new ToleranceModel(settings);
	}

	@Override
	public String name() {
		return this.name;
	}

	@Override
	public PolicyCourse enrol(DogEnrolled dog, Luck luck) {
		return new Course(this.model, dog);
	}

	private static final class Course implements PolicyCourse {

		private final ToleranceModel model;

		private final List<ToleranceEvent> history;

		private ToleranceCourse course;

		private LocalDate lastAsked;

		private boolean stale;

		Course(ToleranceModel model, DogEnrolled dog) {
			this.model = model;
			this.history = new ArrayList<>(List.of(dog));
			this.course = model.follow(this.history);
			this.lastAsked = dog.date();
		}

		@Override
		public void accept(ToleranceEvent event) {
			boolean last = JournalOrder.insert(this.history, event) == this.history.size() - 1;
			if (last && !this.stale && !event.date().isBefore(this.lastAsked)) {
				this.course.tell(event);
			}
			else {
				this.stale = true;
			}
		}

		@Override
		public Dose suggest(LocalDate date, Insight insight) {
			if (this.stale) {
				this.course = this.model.follow(this.history);
				this.stale = false;
			}
			this.lastAsked = date;
			Suggestion today = this.course.suggest(date);
			return new Dose(today.walks(), today.minutes(), today.chanceOfTrouble(), today.toleranceLow(),
					today.toleranceMedian(), today.toleranceHigh(),
					today.reasons().isEmpty() ? "" : today.reasons().get(0).code());
		}

	}

}
