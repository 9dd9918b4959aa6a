package measuredwalk.tolerance;

/** The clinic's own maximum. */
record ClinicMaximum() implements Limit {

	@Override
	public double most(Situation situation) {
		return situation.plan().maxMinutes();
	}

	@Override
	public Reason reason() {
		return Reason.CLINIC_MAXIMUM;
	}

}
