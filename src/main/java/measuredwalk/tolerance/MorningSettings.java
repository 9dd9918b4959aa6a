package measuredwalk.tolerance;

/**
 * What a morning says of the walks of the day before: an ordered logit (McCullagh 1980, J
 * R Stat Soc B 42:109) in which overload and a flare raise the log odds of a worse grade
 * above the dog's own usual mornings.
 *
 * @param overloadEffect what full overload adds to the log odds (S)
 * @param overloadDeviation standard deviation of the log load at which overload shows in
 * the morning (S)
 * @param flareEffect what a flare adds to the log odds (S)
 * @param power weakens the whole: arthritic dogs are stiff in the morning anyway (S)
 * @param usualMild share of mornings with any sign that is assumed before the dog's own
 * are known (S)
 * @param usualBad share of mornings with clear signs that is assumed (S)
 * @param usualWeight how many mornings that assumption is worth (S)
 * @param memory days after which a morning counts half for what is usual (S)
 */
public record MorningSettings(double overloadEffect, double overloadDeviation, double flareEffect, double power,
		double usualMild, double usualBad, double usualWeight, double memory) {

	static MorningSettings standard() {
		return new MorningSettings(1.8, 0.20, 2.0, 0.5, 0.15, 0.03, 10, 60);
	}

}
