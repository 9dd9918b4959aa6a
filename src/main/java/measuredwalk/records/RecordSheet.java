package measuredwalk.records;

import java.util.List;

/**
 * A dog's record as its people read it; public for the template only.
 *
 * @param language the language that it is in
 * @param title whose walks these are
 * @param period from which day to which
 * @param plan the clinic's plan and the medicines, in words
 * @param pictureInWords what the picture shows
 * @param days the days on which anything was told, the newest first
 */
public record RecordSheet(String language, String title, String period, String plan, String pictureInWords,
		List<RecordDay> days) {

	public RecordSheet {
		days = List.copyOf(days);
	}

}
