package measuredwalk.tolerance;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

import measuredwalk.tolerance.ToleranceEvent.WalkTaken;
import measuredwalk.tolerance.filter.GridLaw;
import org.jspecify.annotations.Nullable;

/**
 * The belief's dose for a day: the least over all versions of what was told since
 * yesterday morning with fewer signs and loads, and over the belief with and without
 * doubt of itself.
 */
final class LeastDose {

	private final Parts parts;

	private final Night night;

	/** The day before with clean walks counted only as far as they are trusted. */
	private final DayWalks told;

	LeastDose(Parts parts, Night night) {
		this.parts = parts;
		this.night = night;
		this.told = night.before().walks().cleanUpTo(night.before().trusted());
	}

	/**
	 * The dose, from the belief alone.
	 *
	 * @param minutes minutes of each walk
	 * @param settled the same for a dog that is not new
	 * @param median median of today's tolerance, in minutes
	 */
	record Dose(double minutes, double settled, double median) {

		Dose least(Dose other) {
			return new Dose(Math.min(this.minutes, other.minutes), Math.min(this.settled, other.settled),
					Math.min(this.median, other.median));
		}

	}

	/**
	 * The dose.
	 * @param law the law of the log of today's tolerance
	 * @return the least
	 */
	Dose of(GridLaw law) {
		MorningGrade grade = this.night.grade();
		Dose least = dose((this.told == this.night.before().walks()) ? law : law(this.told, grade));
		boolean plain = !this.night.before().walks().hasSigns() && !this.night.before().facts().hasHarderWalk();
		if (plain && (grade == null || grade.seen() == 0)) {
			return least;
		}
		for (DayWalks walks : lighterWalks()) {
			for (MorningGrade lighter : lighterMornings(grade)) {
				if (!walks.equals(this.told) || !Objects.equals(lighter, grade)) {
					least = least.least(dose(law(walks, lighter)));
				}
			}
		}
		return least;
	}

	private GridLaw law(DayWalks walks, @Nullable MorningGrade grade) {
		return this.parts.filter()
			.lawOvernight(this.night.before().belief(), walks, this.night.likelihood(this.parts.settings(), grade),
					this.night.afterMedicine(this.parts.settings()));
	}

	private Dose dose(GridLaw law) {
		GridLaw wider = law.widened(this.night.widening(this.parts.settings()));
		return (wider == law) ? plainDose(law) : plainDose(law).least(plainDose(wider));
	}

	private Dose plainDose(GridLaw law) {
		DoseSettings dosing = this.parts.settings().dosing();
		double settled = minutes(law, dosing.trouble());
		boolean isNew = this.night.standing().isNew(dosing.newDays(), this.night.today().date());
		double minutes = isNew ? minutes(law, dosing.troubleWhenNew()) : settled;
		return new Dose(minutes, settled, Math.exp(law.quantile(0.5)));
	}

	private double minutes(GridLaw law, double allowed) {
		return this.parts.dosing().forWholeDay(law, this.night.standing().plan().walksPerDay(), allowed);
	}

	private List<DayWalks> lighterWalks() {
		Evening before = this.night.before();
		List<DayWalks> lighter = new ArrayList<>();
		lighter.add(this.told);
		for (List<WalkTaken> version : Lighter.versions(before.facts().walks())) {
			DayWalks walks = DayWalks
				.of(version, before.walks().before(), this.night.standing().plan().walksPerDay(),
						this.parts.settings().walking())
				.cleanUpTo(before.trusted());
			if (!lighter.contains(walks)) {
				lighter.add(walks);
			}
		}
		return lighter;
	}

	private static List<@Nullable MorningGrade> lighterMornings(@Nullable MorningGrade grade) {
		List<@Nullable MorningGrade> grades = new ArrayList<>();
		grades.add(grade);
		if (grade != null) {
			for (int seen = Math.min(2, grade.seen()) - 1; seen >= 0; seen--) {
				grades.add(new MorningGrade(seen, seen));
			}
		}
		return grades;
	}

}
