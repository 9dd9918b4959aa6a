package measuredwalk.tolerance;

/**
 * Flares: some days of less tolerance that pass by themselves. Lengths of a median of 5
 * to 8 days are known of people only (Thomas 2021, Osteoarthritis Cartilage; Parry 2019;
 * H).
 *
 * @param startChance chance a day that one begins (S)
 * @param afterOverloadChance added to it when the day's load passed the overload (S)
 * @param overload what counts as overload, as a multiple of the tolerance (S)
 * @param stayChance chance a day that a flare stays (H, S)
 * @param factor what a flare multiplies tolerance by, in (0, 1) (S)
 */
public record FlareSettings(double startChance, double afterOverloadChance, double overload, double stayChance,
		double factor) {

	static FlareSettings standard() {
		return new FlareSettings(0.025, 0.10, 1.6, 0.75, 0.6);
	}

}
