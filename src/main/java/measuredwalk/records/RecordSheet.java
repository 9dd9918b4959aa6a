package measuredwalk.records;

import java.util.List;

/**
 * A dog's record as its people read it; public for the template only.
 *
 * @param dog what the dog is called
 * @param from the first day in words
 * @param to the last day in words
 * @param walks walks a day by the clinic's plan
 * @param minutes minutes for each by the clinic's plan
 * @param medicines the kinds of medicine that it gets
 * @param pictureInWords what the picture shows
 * @param days the days on which anything was told, the newest first
 */
public record RecordSheet(String dog, String from, String to, int walks, long minutes, List<String> medicines,
		String pictureInWords, List<RecordDay> days) {

	public RecordSheet {
		medicines = List.copyOf(medicines);
		days = List.copyOf(days);
	}

}
