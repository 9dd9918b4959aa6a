package measuredwalk.reading.observation;

import measuredwalk.reading.context.Context;
import measuredwalk.reading.lexicon.Mention;
import measuredwalk.signs.Sign;

/**
 * A sign with the words that told of it.
 *
 * @param sign the sign
 * @param mention its words
 * @param context the context these stand in
 * @param urgent whether the words alone tell of an emergency, when the sign is present
 */
public record Observation(Sign sign, Mention mention, Context context, boolean urgent) {

	/**
	 * The same words with another sign.
	 * @param other the sign
	 * @return the observation
	 */
	public Observation with(Sign other) {
		return new Observation(other, this.mention, this.context, this.urgent);
	}

}
