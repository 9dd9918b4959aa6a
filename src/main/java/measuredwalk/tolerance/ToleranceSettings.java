package measuredwalk.tolerance;

/**
 * Every constant of the model. Grades are those of the clinical rules: A dog trial, B dog
 * cohort or survey, C expert opinion or common practice, H borrowed from people, S chosen
 * by simulation. None is measured on the dogs that the tool serves, and a clinic may
 * change each.
 *
 * @param drift how tolerance moves from day to day
 * @param flares flares and their recovery
 * @param walking how a walk meets the tolerance
 * @param owners how owners see and tell
 * @param mornings what a morning says of the day before
 * @param dosing which dose is chosen from the belief
 * @param limits clinical limits on top of it
 * @param check when the model doubts itself
 */
public record ToleranceSettings(DriftSettings drift, FlareSettings flares, WalkSettings walking, OwnerSettings owners,
		MorningSettings mornings, DoseSettings dosing, LimitSettings limits, CheckSettings check) {

	/**
	 * The settings that the tool starts with.
	 * @return the settings
	 */
	public static ToleranceSettings standard() {
		return of(DosingSettings.standard());
	}

	/**
	 * The settings with a clinic's own dosing rule.
	 * @param chosen the clinic's choice
	 * @return the settings
	 */
	public static ToleranceSettings of(DosingSettings chosen) {
		return new ToleranceSettings(DriftSettings.standard(), FlareSettings.standard(), WalkSettings.standard(),
				OwnerSettings.standard(), MorningSettings.standard(), DoseSettings.of(chosen), LimitSettings.of(chosen),
				CheckSettings.standard());
	}

	/**
	 * The same with another rule for the dose.
	 * @param other the rule
	 * @return the settings
	 */
	public ToleranceSettings withDosing(DoseSettings other) {
		return new ToleranceSettings(this.drift, this.flares, this.walking, this.owners, this.mornings, other,
				this.limits, this.check);
	}

	/**
	 * The same with other clinical limits.
	 * @param other the limits
	 * @return the settings
	 */
	public ToleranceSettings withLimits(LimitSettings other) {
		return new ToleranceSettings(this.drift, this.flares, this.walking, this.owners, this.mornings, this.dosing,
				other, this.check);
	}

}
