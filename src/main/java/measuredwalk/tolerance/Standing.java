package measuredwalk.tolerance;

import java.time.LocalDate;
import java.util.Set;

import org.jspecify.annotations.Nullable;

/**
 * What stands about the dog until it is changed.
 *
 * @param enrolled when and how it was taken on
 * @param plan the clinic's plan
 * @param medicineChanged the last change of a medicine, or null
 * @param medicineStarted the last start or change of one, or null
 * @param medicines kinds of medicine that it gets
 */
record Standing(ToleranceEvent.DogEnrolled enrolled, WalkPlan plan, @Nullable LocalDate medicineChanged,
		@Nullable LocalDate medicineStarted, Set<String> medicines) {

	Standing {
		medicines = Set.copyOf(medicines);
	}

	static Standing of(ToleranceEvent.DogEnrolled enrolled) {
		return new Standing(enrolled, enrolled.plan(), null, null, Set.of());
	}

	Standing with(ToleranceEvent.PlanChanged change) {
		return new Standing(this.enrolled, change.plan(), this.medicineChanged, this.medicineStarted, this.medicines);
	}

	Standing with(ToleranceEvent.MedicationChanged change) {
		Set<String> kinds = new java.util.TreeSet<>(this.medicines);
		boolean stopped = change.change() == ToleranceEvent.MedicationChanged.Change.STOPPED;
		if (stopped) {
			kinds.remove(change.kind());
		}
		else {
			kinds.add(change.kind());
		}
		return new Standing(this.enrolled, this.plan, change.date(), stopped ? this.medicineStarted : change.date(),
				kinds);
	}

	boolean changedMedicineWithin(int days, LocalDate date) {
		return this.medicineChanged != null && this.medicineChanged.plusDays(days).isAfter(date);
	}

	boolean isNew(int days, LocalDate date) {
		return this.enrolled.date().plusDays(days).isAfter(date);
	}

}
