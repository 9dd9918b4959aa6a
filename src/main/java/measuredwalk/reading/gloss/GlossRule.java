package measuredwalk.reading.gloss;

import java.util.List;

/**
 * A phrase and its English.
 *
 * @param pieces the phrase
 * @param english its English, with {@code $1} for the first thing kept
 */
record GlossRule(List<Piece> pieces, String english) {

}
