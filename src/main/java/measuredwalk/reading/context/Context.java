package measuredwalk.reading.context;

/**
 * In what context a phrase stands.
 *
 * @param negated it is said not to be there
 * @param hedged it is hardly there: 'barely stiff'
 * @param less there is less of it than before: 'less stiff'
 * @param uncertain the writer is not sure
 * @param historical it was there, and it is not said to be there now
 * @param recent it is historical, but of yesterday: too near to be past for an emergency
 * @param hypothetical it is feared, watched for or asked about
 * @param other it is another dog's or a person's
 */
public record Context(boolean negated, boolean hedged, boolean less, boolean uncertain, boolean historical,
		boolean recent, boolean hypothetical, boolean other) {

	/**
	 * Whether it is told of this dog, now.
	 * @return true when it is, present or denied
	 */
	public boolean isOfThisDogNow() {
		return !this.historical && !this.hypothetical && !this.other;
	}

}
