package measuredwalk.tolerance.simulation;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/**
 * Draws the model with one dog of each kind into a folder, {@code docs/pictures} when
 * none is named.
 */
public final class ToleranceTrajectories {

	private static final int DAYS = 180;

	/** Odd, so that there is one in the middle. */
	private static final int CANDIDATES = 15;

	private ToleranceTrajectories() {
	}

	/**
	 * Draws them.
	 * @param arguments the folder, or nothing
	 * @throws IOException when it cannot be written
	 */
	public static void main(String[] arguments) throws IOException {
		Path folder = Path.of((arguments.length > 0) ? arguments[0] : "docs/pictures");
		Files.createDirectories(folder);
		for (Kind kind : Kind.values()) {
			String name = kind.name().toLowerCase(Locale.ROOT).replace('_', '-');
			Files.writeString(folder.resolve("tolerance-" + name + ".svg"), picture(kind, new ModelPolicy()));
		}
	}

	/**
	 * The dog in the middle by regret, so that the picture is neither the best nor the
	 * worst.
	 */
	static String picture(Kind kind, Policy policy) {
		long seed = Seeds.JUDGING.first(1)[0];
		List<List<TrialDay>> trials = new ArrayList<>();
		for (int number = 0; number < CANDIDATES; number++) {
			Household home = Household.draw(Worlds.MILDER, kind, number, seed);
			trials.add(Trial.run(home, policy, DAYS));
		}
		trials.sort(Comparator.comparingDouble(ToleranceTrajectories::regret));
		return new TrajectoryPicture(title(kind), trials.get(CANDIDATES / 2)).svg();
	}

	private static double regret(List<TrialDay> trial) {
		return trial.stream().mapToDouble((day) -> Tally.regret(day.dose().minutes(), day.limit())).sum();
	}

	private static String title(Kind kind) {
		String words = kind.name().toLowerCase(Locale.ROOT).replace('_', ' ');
		return "One dog of the kind '" + words + "'";
	}

}
