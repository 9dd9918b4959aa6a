package measuredwalk.reading.level;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;

import measuredwalk.reading.Level;
import measuredwalk.reading.words.Words;
import org.jspecify.annotations.Nullable;

/**
 * A second net behind the rules: how much the wording of a message is like that of
 * messages which could not wait. A logistic regression over words and short runs of words
 * (Cox 1958), learned from the labelled messages of the project; it knows no grammar, and
 * so it catches what no rule was written for. It can only raise a level.
 */
public final class UrgentWording {

	private static final String FILE = "urgent-wording.tsv";

	private static final double SAME_DAY_AT = 0.75;

	private static final double EMERGENCY_AT = 0.6;

	private final Map<String, float[]> weights;

	private final float[] start;

	private UrgentWording(Map<String, float[]> weights) {
		this.weights = weights;
		this.start = weights.remove("");
	}

	/**
	 * The net with the weights that are packed in the jar.
	 * @return the net
	 */
	public static UrgentWording standard() {
		try (InputStream file = UrgentWording.class.getResourceAsStream("/measuredwalk/reading/" + FILE);
				BufferedReader lines = new BufferedReader(new InputStreamReader(file, StandardCharsets.UTF_8))) {
			Map<String, float[]> weights = new HashMap<>();
			lines.lines().filter((line) -> !line.startsWith("//")).forEach((line) -> {
				String[] parts = line.split("\t");
				weights.put(parts[0], new float[] { Float.parseFloat(parts[1]), Float.parseFloat(parts[2]) });
			});
			return new UrgentWording(weights);
		}
		catch (IOException ex) {
			throw new UncheckedIOException("Cannot read " + FILE, ex);
		}
	}

	/**
	 * The level that the wording alone speaks for.
	 * @param words the message
	 * @param dogName the dog's name, or null
	 * @return emergency, same-day or none
	 */
	public Level level(Words words, @Nullable String dogName) {
		double[] chances = chances(words, dogName);
		if (chances[0] < SAME_DAY_AT) {
			return Level.NONE;
		}
		return (chances[1] >= EMERGENCY_AT) ? Level.EMERGENCY : Level.SAME_DAY;
	}

	/**
	 * How likely the message is urgent, and how likely it is an emergency, as far as its
	 * wording goes.
	 */
	double[] chances(Words words, @Nullable String dogName) {
		Set<String> runs = WordRuns.of(words, dogName);
		double urgent = 0;
		double emergency = 0;
		for (String run : runs) {
			float[] weight = this.weights.get(run);
			if (weight != null) {
				urgent += weight[0];
				emergency += weight[1];
			}
		}
		double scale = 1 / Math.sqrt(Math.max(1, runs.size()));
		return new double[] { logistic(this.start[0] + urgent * scale), logistic(this.start[1] + emergency * scale) };
	}

	private static double logistic(double odds) {
		return 1 / (1 + Math.exp(-odds));
	}

}
