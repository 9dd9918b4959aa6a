package measuredwalk.reading.load;

import java.util.List;

import measuredwalk.reading.LoadTold;
import measuredwalk.reading.OwnerMessage;
import measuredwalk.reading.context.Annotation;
import measuredwalk.reading.context.ContextReader;

/**
 * Reads what made a walk harder than usual. Only what is plainly told of this dog and of
 * a walk that was taken counts: what is unclear, asked, still to come, another dog's or
 * as on every day is left out. Safe for use by many threads.
 */
public final class LoadReader {

	private final LoadCues cues = LoadCues.standard();

	/**
	 * Reads a message.
	 * @param message the message
	 * @param annotation its phrases
	 * @param contexts its contexts
	 * @param places for each walk told the word that tells its length, -1 where none does
	 * @param yesterday whether the walks are of the day before
	 * @return the loads told and denied, in order, none twice of one walk
	 */
	public List<LoadTold> read(OwnerMessage message, Annotation annotation, ContextReader contexts,
			List<Integer> places, boolean yesterday) {
		LoadScan scan = new LoadScan(annotation, contexts);
		scan.find(this.cues, message);
		return scan.told(places, yesterday);
	}

}
