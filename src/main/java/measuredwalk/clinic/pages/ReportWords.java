package measuredwalk.clinic.pages;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;

import measuredwalk.journal.MorningEntry;
import measuredwalk.journal.Said;
import measuredwalk.journal.WalkEntry;
import measuredwalk.signs.Overall;
import measuredwalk.signs.Severity;
import measuredwalk.signs.Sign;

/**
 * Chooses the owner's words for a report by a rule that the report states, so that nobody
 * picks what suits.
 */
final class ReportWords {

	/** The rule, as the report states it. */
	static final String RULE = "Chosen by rule: what was said of the day with the gravest signs in each week, the gravest"
			+ " days first and the newest among equals, at most four, each cut at 180 characters.";

	private static final int MOST = 4;

	private static final int LONGEST = 180;

	private static final int WEEK = 7;

	private ReportWords() {
	}

	/** What was said on a day, and how grave its signs were. */
	private record Told(LocalDate date, int grade, Said said) {
	}

	static List<SaidLine> of(List<WalkEntry> walks, List<MorningEntry> mornings, LocalDate from, LocalDate last,
			ZoneId zone) {
		List<Told> all = Stream
			.concat(walks.stream().flatMap(ReportWords::told), mornings.stream().flatMap(ReportWords::told))
			.filter((told) -> told.grade() > 0 && !told.date().isBefore(from) && !told.date().isAfter(last))
			.sorted(Comparator.comparing(Told::grade)
				.thenComparing(Told::date)
				.thenComparing((told) -> told.said().at())
				.reversed())
			.toList();
		Set<Long> weeks = new HashSet<>();
		List<SaidLine> chosen = new ArrayList<>();
		for (Told told : all) {
			long week = (last.toEpochDay() - told.date().toEpochDay()) / WEEK;
			if (chosen.size() < MOST && weeks.add(week)) {
				chosen.add(new SaidLine(cut(told.said().text()), told.said().by(),
						Wording.moment(told.said().at(), zone)));
			}
		}
		return List.copyOf(chosen);
	}

	private static Stream<Told> told(WalkEntry walk) {
		int grade = grade(walk.facts().signs(), walk.facts().overall() == Overall.WORSE);
		return walk.said().stream().map((said) -> new Told(walk.facts().date(), grade, said));
	}

	private static Stream<Told> told(MorningEntry morning) {
		int grade = grade(morning.facts().signs(), morning.facts().overall() == Overall.WORSE);
		return morning.said().stream().map((said) -> new Told(morning.facts().date(), grade, said));
	}

	private static int grade(List<Sign> signs, boolean worse) {
		int worst = signs.stream().filter(Sign::present).mapToInt(ReportWords::grade).max().orElse(0);
		return worse ? Math.max(1, worst) : worst;
	}

	/** What was not said counts as mild. */
	private static int grade(Sign sign) {
		Severity severity = sign.severity();
		return (severity != null) ? severity.ordinal() + 1 : 1;
	}

	private static String cut(String text) {
		String line = text.replaceAll("\\s+", " ").strip();
		return (line.length() <= LONGEST) ? line
				: line.substring(0,
						line.offsetByCodePoints(0, Math.min(LONGEST - 1, line.codePointCount(0, line.length()))))
						+ "\u2026";
	}

	/** How often each sign was told of, the most frequent first. */
	static List<String> signs(List<WalkEntry> walks, List<MorningEntry> mornings, LocalDate from, int most) {
		Map<String, Integer> counts = new TreeMap<>();
		Stream
			.concat(walks.stream()
				.filter((walk) -> !walk.facts().date().isBefore(from))
				.map((walk) -> walk.facts().signs()),
					mornings.stream()
						.filter((morning) -> !morning.facts().date().isBefore(from))
						.map((morning) -> morning.facts().signs()))
			.forEach((signs) -> signs.stream()
				.filter(Sign::present)
				.map((sign) -> Wording.words(sign.kind()))
				.distinct()
				.forEach((sign) -> counts.merge(sign, 1, Integer::sum)));
		return counts.entrySet()
			.stream()
			.sorted(Map.Entry.<String, Integer>comparingByValue().reversed().thenComparing(Map.Entry.comparingByKey()))
			.limit(most)
			.map((each) -> each.getKey() + " " + each.getValue())
			.toList();
	}

}
