package measuredwalk.tolerance.simulation;

/**
 * How check-ins fare in a world.
 *
 * @param silence how unanswered ones hang together
 * @param missed share unanswered
 * @param late share that comes two days late
 * @param misread share of walks with a wrong amount
 */
record AnswerLaws(SilenceLaw silence, double missed, double late, double misread) {

	/**
	 * 15 % of prompts go unanswered (Ono 2019); 3 % misread is a guess. Late answers have
	 * a stress world of their own, because each has the model replay its journal.
	 */
	static final AnswerLaws USUAL = new AnswerLaws(SilenceLaw.AT_RANDOM, 0.15, 0, 0.03);

	AnswerLaws withSilence(SilenceLaw law, double share) {
		return new AnswerLaws(law, share, this.late, this.misread);
	}

	AnswerLaws withLate(double share) {
		return new AnswerLaws(this.silence, this.missed, share, this.misread);
	}

	AnswerLaws withMisread(double share) {
		return new AnswerLaws(this.silence, this.missed, this.late, share);
	}

}
