package measuredwalk.reading;

import java.util.List;

/**
 * A question about one field that could be read in more than one way.
 *
 * @param field path of the field, such as {@code walks[0].minutes}
 * @param readings the ways to read it, likeliest first, in words that can stand on a
 * button and be read again as an answer, such as '15 minutes'
 */
public record AskBack(String field, List<String> readings) {

	public AskBack {
		readings = List.copyOf(readings);
	}

}
