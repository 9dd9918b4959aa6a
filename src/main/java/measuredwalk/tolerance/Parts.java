package measuredwalk.tolerance;

/**
 * The parts of the model that are made once and shared by all dogs.
 *
 * @param settings the constants
 * @param filter moves the belief
 * @param dosing chooses a dose from it
 * @param clinical limits the dose
 */
record Parts(ToleranceSettings settings, BeliefFilter filter, Dosing dosing, ClinicalLayer clinical) {

	static Parts of(ToleranceSettings settings) {
		return new Parts(settings, new BeliefFilter(settings), new Dosing(settings),
				new ClinicalLayer(settings.limits()));
	}

}
