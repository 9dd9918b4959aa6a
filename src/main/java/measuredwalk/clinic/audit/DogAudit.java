package measuredwalk.clinic.audit;

import java.util.UUID;

/**
 * What a dog adds to the audit of the last {@link Audits#DAYS} days.
 *
 * @param dogId the dog
 * @param days days that it was looked after in that time
 * @param walks walks told of with their minutes
 * @param walksInBand of these, as long as that day's suggestion asked
 * @param flares spells of being worse than its own usual for a day or more
 * @param morningsAnswered mornings told of
 * @param morningsExpected mornings that were there to be told of
 */
public record DogAudit(UUID dogId, int days, int walks, int walksInBand, int flares, int morningsAnswered,
		int morningsExpected) {

	/** With fewer walks a dog is neither in nor out of the band. Ours, no source. */
	static final int FEWEST_WALKS = 7;

	/** Whether there are enough walks to say whether it keeps within the band. */
	boolean walked() {
		return this.walks >= FEWEST_WALKS;
	}

	/** Whether at least half of its walks were within the band. Ours, no source. */
	boolean withinBand() {
		return walked() && 2 * this.walksInBand >= this.walks;
	}

	double answersShare() {
		return (double) this.morningsAnswered / this.morningsExpected;
	}

}
