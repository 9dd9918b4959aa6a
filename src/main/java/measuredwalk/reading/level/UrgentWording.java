package measuredwalk.reading.level;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.NavigableMap;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.IntStream;

import measuredwalk.reading.Level;
import measuredwalk.reading.context.Annotation;
import measuredwalk.reading.words.Words;
import measuredwalk.signs.Basis;
import measuredwalk.signs.Grade;
import org.jspecify.annotations.Nullable;

/**
 * A second net behind the rules: how much the wording of a message is like that of
 * messages which could not wait. A logistic regression over words and short runs of words
 * (Cox 1958), learned from the labelled messages of the project; it knows no grammar, and
 * so it catches what no rule was written for. It can only raise a level.
 */
public final class UrgentWording {

	private static final String FILE = "urgent-wording.tsv";

	/**
	 * By the table that the training prints: messages of authors who are left out of the
	 * learning are raised wrongly about once in ten at this chance.
	 */
	private static final double URGENT_AT = 0.85;

	private static final double EMERGENCY_AT = 0.6;

	/**
	 * 'Nothing really' is a good answer to whether anything else was seen, though
	 * 'nothing' begins messages such as 'nothing eaten for two days'. A message of these
	 * words alone is never raised.
	 */
	private static final Set<String> BARE_DENIAL = Set.of("no", "nope", "nah", "nothing", "none", "really", "else",
			"much", "new", "at", "all", "other", "to", "report", "add", "today", "i", "we", "saw", "noticed", "that",
			"of", "note");

	private static final String REASON = "worded like what cannot wait";

	private static final Basis LEARNED = Basis.of(Grade.S, "learned from labelled messages; docs/reading-accuracy.md");

	private static final LevelRule EMERGENCY = new LevelRule(REASON, Level.EMERGENCY, LEARNED, (found) -> true);

	private static final LevelRule SAME_DAY = new LevelRule(REASON, Level.SAME_DAY, LEARNED, (found) -> true);

	/** The runs that have weights, in rising order. */
	private final long[] runs;

	private final float[] urgentWeights;

	private final float[] emergencyWeights;

	private final float urgentStart;

	private final float emergencyStart;

	private UrgentWording(List<String> lines) {
		String[] start = lines.get(0).split("\t");
		this.urgentStart = Float.parseFloat(start[1]);
		this.emergencyStart = Float.parseFloat(start[2]);
		NavigableMap<Long, String[]> byRun = new TreeMap<>();
		lines.stream()
			.skip(1)
			.map((line) -> line.split("\t"))
			.forEach((parts) -> byRun.put(WordRuns.of(parts[0]), parts));
		this.runs = byRun.keySet().stream().mapToLong(Long::longValue).toArray();
		this.urgentWeights = new float[this.runs.length];
		this.emergencyWeights = new float[this.runs.length];
		int at = 0;
		for (String[] parts : byRun.values()) {
			this.urgentWeights[at] = Float.parseFloat(parts[1]);
			this.emergencyWeights[at++] = Float.parseFloat(parts[2]);
		}
	}

	/**
	 * The net with the weights that are packed in the jar.
	 * @return the net
	 */
	public static UrgentWording standard() {
		try (InputStream file = UrgentWording.class.getResourceAsStream("/measuredwalk/reading/" + FILE);
				BufferedReader lines = new BufferedReader(new InputStreamReader(file, StandardCharsets.UTF_8))) {
			return new UrgentWording(lines.lines().filter((line) -> !line.startsWith("//")).toList());
		}
		catch (IOException ex) {
			throw new UncheckedIOException("Cannot read " + FILE, ex);
		}
	}

	/**
	 * The rules that the wording alone can meet.
	 * @return the rules, the most serious first
	 */
	public static List<LevelRule> rules() {
		return List.of(EMERGENCY, SAME_DAY);
	}

	/**
	 * The rule that the wording alone meets.
	 * @param annotation the message
	 * @param dogName the dog's name, or null
	 * @param ordinary what the rules read in it that many a day has
	 * @return a rule of the level emergency or same-day, or null when neither is likely
	 * enough
	 */
	public @Nullable LevelRule rule(Annotation annotation, @Nullable String dogName, OrdinaryFindings ordinary) {
		if (isBareDenial(annotation.words())) {
			return null;
		}
		double[] chances = chances(annotation, dogName, ordinary);
		if (chances[0] < URGENT_AT) {
			return null;
		}
		return (chances[1] >= EMERGENCY_AT) ? EMERGENCY : SAME_DAY;
	}

	private static boolean isBareDenial(Words words) {
		return IntStream.range(0, words.size()).mapToObj(words::form).allMatch(BARE_DENIAL::contains);
	}

	/**
	 * How likely the message is urgent, and how likely it is an emergency, as far as its
	 * wording goes.
	 */
	double[] chances(Annotation annotation, @Nullable String dogName, OrdinaryFindings ordinary) {
		long[] told = WordRuns.of(annotation, dogName);
		double scale = 1 / Math.sqrt(Math.max(1, told.length));
		double[] odds = { this.urgentStart, this.emergencyStart };
		for (long run : told) {
			add(odds, run, scale);
		}
		ordinary.names().forEach((name) -> add(odds, WordRuns.of(name), OrdinaryFindings.VALUE));
		return new double[] { logistic(odds[0]), logistic(odds[1]) };
	}

	private void add(double[] odds, long run, double value) {
		int at = Arrays.binarySearch(this.runs, run);
		if (at >= 0) {
			odds[0] += this.urgentWeights[at] * value;
			odds[1] += this.emergencyWeights[at] * value;
		}
	}

	private static double logistic(double odds) {
		return 1 / (1 + Math.exp(-odds));
	}

}
