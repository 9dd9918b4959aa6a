package measuredwalk.tolerance;

/**
 * When the model doubts itself: more trouble came than it foretold, more often than
 * chance would have it. Then today's tolerance is held to be less sure than the equations
 * say, which lowers the dose and widens the interval that is shown.
 *
 * @param from standardised excess of signs from which it doubts: beyond it lie 2 of 100
 * dogs for whom the model is right (convention of two standard errors)
 * @param full standardised excess at which the doubt is full (S)
 * @param widest standard deviation of log tolerance that full doubt adds to today's law:
 * as much as the day's own luck (S)
 * @param memory days told after which a day counts half (S)
 * @param enough sum of variances that is needed to judge at all: about twenty walks on
 * which a sign had a chance of one in eight (S)
 */
public record CheckSettings(double from, double full, double widest, double memory, double enough) {

	static CheckSettings standard() {
		return new CheckSettings(2, 4, 0.15, 60, 2);
	}

	/**
	 * The same without any doubt, whatever comes.
	 * @return the settings
	 */
	static CheckSettings none() {
		return new CheckSettings(2, 4, 0, 60, 2);
	}

}
