package measuredwalk.reading.lexicon;

/**
 * A rule of the emergency screen: a word of each family, near one another.
 *
 * @param entry the sign that it tells
 * @param families symbols of the classes, one word of each being needed; not to be
 * changed
 * @param window how many words apart they may be
 */
@SuppressWarnings("ArrayRecordComponent")
public record ScreenRule(Entry entry, int[] families, int window) {
}
