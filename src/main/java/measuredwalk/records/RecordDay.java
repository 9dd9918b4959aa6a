package measuredwalk.records;

import java.util.List;

/**
 * A day of a dog's record; public for the template only.
 *
 * @param date the day in words
 * @param walks how many walks were suggested that morning
 * @param minutes minutes for each
 * @param lines what was told, the morning first
 */
public record RecordDay(String date, int walks, long minutes, List<RecordLine> lines) {

	public RecordDay {
		lines = List.copyOf(lines);
	}

}
