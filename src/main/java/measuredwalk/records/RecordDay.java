package measuredwalk.records;

import java.util.List;

/**
 * A day of a dog's record; public for the template only.
 *
 * @param date the day in words
 * @param suggested what was suggested that morning, in words
 * @param lines what was told, the morning first
 */
public record RecordDay(String date, String suggested, List<RecordLine> lines) {

	public RecordDay {
		lines = List.copyOf(lines);
	}

}
