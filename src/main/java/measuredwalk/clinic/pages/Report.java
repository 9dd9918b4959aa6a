package measuredwalk.clinic.pages;

import java.util.List;
import java.util.UUID;

/**
 * A re-check report, one page; public for the templates only.
 *
 * @param dogId the dog
 * @param dog what it is called
 * @param about weight, age and medicines in words
 * @param period the days that it is about
 * @param plan the clinic's plan now
 * @param dose today's suggestion
 * @param tolerance the tolerance now and at the start, with the 80 percent interval
 * @param answers the share of morning check-ins answered
 * @param signs how often each sign was told of
 * @param weeks the weeks, the newest first
 * @param timeline the course as SVG
 * @param timelineInWords the same in a sentence
 * @param medicines medicines, when they were started and stopped
 * @param changes plan changes in the period
 * @param alerts alerts and what was done
 * @param more how many alerts are not shown
 * @param words the owner's own words
 * @param rule how these were chosen
 * @param cautions what the reader must bear in mind
 */
public record Report(UUID dogId, String dog, String about, String period, String plan, String dose, String tolerance,
		String answers, String signs, List<ReportWeek> weeks, String timeline, String timelineInWords,
		List<String> medicines, List<String> changes, List<ReportAlert> alerts, int more, List<SaidLine> words,
		String rule, List<String> cautions) {

	public Report {
		weeks = List.copyOf(weeks);
		medicines = List.copyOf(medicines);
		changes = List.copyOf(changes);
		alerts = List.copyOf(alerts);
		words = List.copyOf(words);
		cautions = List.copyOf(cautions);
	}

}
