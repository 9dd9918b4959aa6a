package measuredwalk.reading.quantity;

/**
 * Where in the text a quantity stands.
 *
 * @param firstToken index of its first token
 * @param lastToken index of its last token
 * @param start offset of its first character
 * @param end offset behind its last character
 */
public record Span(int firstToken, int lastToken, int start, int end) {
}
