package measuredwalk.reading.benchmark;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** How many durations in owners' range each reader reads right. */
public final class DurationComparison {

	private static final List<DurationLine> LINES = DurationLine.all().stream().filter(DurationLine::core).toList();

	private DurationComparison() {
	}

	/**
	 * How many lines are compared.
	 * @return at least one
	 */
	public static int lines() {
		return LINES.size();
	}

	/**
	 * Lets every reader read every line.
	 * @return how many lines each reads right
	 */
	public static Map<DurationReader, Integer> right() {
		Map<DurationReader, Integer> right = new EnumMap<>(DurationReader.class);
		for (DurationReader reader : DurationReader.values()) {
			right.put(reader, (int) LINES.stream().filter((line) -> line.isRight(reader.seconds(line.text()))).count());
		}
		return right;
	}

}
