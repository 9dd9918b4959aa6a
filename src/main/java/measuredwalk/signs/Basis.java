package measuredwalk.signs;

import java.time.LocalDate;

/**
 * What a clinical rule rests on, and until when that was looked at. It stands beside each
 * rule, so that none outlives its evidence unseen.
 *
 * @param grade how well founded it is
 * @param source where it is from
 * @param checkedOn the day on which the rule was last held against the clinical notes
 * that name its source
 * @param validUntil the last day on which that check counts
 */
public record Basis(Grade grade, String source, LocalDate checkedOn, LocalDate validUntil) {

	/** A check counts so long. Common practice for clinical guidance, no source. */
	private static final int YEARS = 2;

	/** The day on which all rules were last held against the notes in one round. */
	public static final LocalDate LAST_ROUND = LocalDate.of(2026, 11, 25);

	public Basis {
		if (source.isBlank() || validUntil.isBefore(checkedOn)) {
			throw new IllegalArgumentException("a rule needs a source, and a check that counts from its day on");
		}
	}

	/**
	 * The basis of a rule that was checked with all others.
	 * @param grade how well founded it is
	 * @param source where it is from
	 * @return the basis, valid for two years from the last round
	 */
	public static Basis of(Grade grade, String source) {
		return checked(grade, source, LAST_ROUND);
	}

	/**
	 * The basis of a rule that was checked on a day of its own.
	 * @param grade how well founded it is
	 * @param source where it is from
	 * @param checkedOn the day
	 * @return the basis, valid for two years
	 */
	public static Basis checked(Grade grade, String source, LocalDate checkedOn) {
		return new Basis(grade, source, checkedOn, checkedOn.plusYears(YEARS));
	}

	/**
	 * Whether the check has run out.
	 * @param today the day of asking
	 * @return true after the last day on which it counts
	 */
	public boolean isPast(LocalDate today) {
		return today.isAfter(this.validUntil);
	}

}
