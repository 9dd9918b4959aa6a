package measuredwalk.tolerance.filter;

import java.util.List;

/**
 * How a state moves from one day to the next: one of several normal steps.
 *
 * @param steps the possible steps; their chances sum to 1
 */
public record Drift(List<Step> steps) {

	/**
	 * One possible step.
	 *
	 * @param chance how likely it is, in (0, 1]
	 * @param kernel the step
	 */
	public record Step(double chance, Kernel kernel) {
	}

	public Drift {
		steps = List.copyOf(steps);
	}

	/**
	 * A single normal step.
	 * @param deviation its standard deviation; 0 for none
	 * @param gridStep distance of two grid points
	 * @return the drift
	 */
	public static Drift normal(double deviation, double gridStep) {
		return new Drift(List.of(new Step(1, Kernel.normal(0, deviation, gridStep))));
	}

}
