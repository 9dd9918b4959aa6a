package measuredwalk.records;

import java.time.LocalDate;

import measuredwalk.journal.MorningFacts;
import measuredwalk.journal.WalkFacts;
import measuredwalk.signs.Sign;

/** Puts entries of the journal into the words that owners read elsewhere. */
public interface RecordWords {

	/**
	 * A walk in one line.
	 * @param facts the walk
	 * @param today the day from which dates are told, as in 'yesterday'
	 * @return a sentence
	 */
	String walk(WalkFacts facts, LocalDate today);

	/**
	 * A morning in one line.
	 * @param facts the morning
	 * @param today the day from which dates are told, as in 'yesterday'
	 * @return a sentence
	 */
	String morning(MorningFacts facts, LocalDate today);

	/**
	 * A sign in a few words.
	 * @param sign the sign, seen or denied
	 * @return the words
	 */
	String sign(Sign sign);

}
