package measuredwalk.reading.level;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.StringJoiner;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;

import de.bwaldvogel.liblinear.Feature;
import de.bwaldvogel.liblinear.FeatureNode;
import de.bwaldvogel.liblinear.Linear;
import de.bwaldvogel.liblinear.Model;
import de.bwaldvogel.liblinear.Parameter;
import de.bwaldvogel.liblinear.Problem;
import de.bwaldvogel.liblinear.SolverType;
import measuredwalk.reading.MessageReader;
import measuredwalk.reading.OwnerMessage;
import measuredwalk.reading.Question;
import measuredwalk.reading.Reading;
import measuredwalk.reading.context.Annotation;
import measuredwalk.reading.lexicon.Lexicon;
import measuredwalk.reading.score.LabelledMessage;
import measuredwalk.reading.words.WordReader;
import measuredwalk.reading.words.Words;
import org.jspecify.annotations.Nullable;

/**
 * Learns the weights of {@link UrgentWording} from the labelled messages in
 * {@code fixtures/reading} and prints how well each file is read by weights learned from
 * the others. Run it after adding messages:
 * {@code java -cp target/classes:target/test-classes:... measuredwalk.reading.level.UrgentWordingTraining}
 */
final class UrgentWordingTraining {

	private static final Path FIXTURES = Path.of("fixtures/reading");

	private static final Path WEIGHTS = Path.of("src/main/resources/measuredwalk/reading/urgent-wording.tsv");

	/** Never learned from, so that they can judge. */
	private static final Set<String> JUDGES = Set.of("untouched.jsonl", "hidden-ordinary.jsonl", "hidden-plain.jsonl",
			"hidden-urgent.jsonl");

	/** Read as the English that it says, so its own words teach nothing. */
	private static final String OTHER_LANGUAGE = "spanish-";

	/** A run that stands in one message only says nothing of the next. */
	private static final int FEWEST_MESSAGES = 2;

	/** Weights nearer to nothing than this change no answer. */
	private static final double LEAST_WEIGHT = 0.02;

	private static final double COST = 10;

	private static final double[] THRESHOLDS = { 0.5, 0.6, 0.7, 0.75, 0.8, 0.85, 0.9 };

	/** A message as its runs, and its labels. */
	private record Example(String file, Set<String> runs, Set<String> ordinary, boolean urgent, boolean emergency) {
	}

	/** The listed wordings come without a time; none of them is read by it. */
	private static final LocalDateTime LISTED_AT = LocalDateTime.of(2026, 3, 14, 18, 30);

	private final Lexicon lexicon = Lexicon.standard();

	private final WordReader reader = new WordReader(this.lexicon);

	private UrgentWordingTraining() {
	}

	public static void main(String[] arguments) throws IOException {
		Linear.disableDebugOutput();
		UrgentWordingTraining training = new UrgentWordingTraining();
		List<Example> examples = training.examples();
		System.out.printf("%d messages, %d urgent%n", examples.size(),
				examples.stream().filter(Example::urgent).count());
		for (String file : examples.stream().map(Example::file).distinct().toList()) {
			judge(file, examples);
		}
		Weights weights = Weights.learned(examples);
		weights.write(WEIGHTS);
	}

	private static void judge(String file, List<Example> examples) {
		Weights weights = Weights.learned(examples.stream().filter((each) -> !each.file().equals(file)).toList());
		List<Example> judged = examples.stream().filter((each) -> each.file().equals(file)).toList();
		long urgent = judged.stream().filter(Example::urgent).count();
		StringBuilder line = new StringBuilder(String.format("%-32s %3d of %3d urgent;", file, urgent, judged.size()));
		for (double threshold : THRESHOLDS) {
			List<Example> raised = judged.stream().filter((each) -> weights.urgent(each) >= threshold).toList();
			line.append(String.format(Locale.ROOT, "  %.2f: %d found of %d raised", threshold,
					raised.stream().filter(Example::urgent).count(), raised.size()));
		}
		System.out.println(line);
	}

	private List<Example> examples() throws IOException {
		List<Example> examples = new ArrayList<>();
		try (Stream<Path> files = Files.list(FIXTURES)) {
			for (Path file : files.sorted().toList()) {
				String name = file.getFileName().toString();
				if (name.endsWith(".jsonl") && !JUDGES.contains(name) && !name.startsWith(OTHER_LANGUAGE)) {
					LabelledMessage.read(file)
						.stream()
						.filter((each) -> !hangsOnAMedicine(each))
						.map((each) -> example(name, each))
						.forEach(examples::add);
				}
			}
		}
		examples.addAll(lines("emergency-wordings.txt", true));
		examples.addAll(lines("ordinary-wordings.txt", false));
		return examples;
	}

	/** What is urgent by the medicine given with it is not urgent by its wording. */
	private static boolean hangsOnAMedicine(LabelledMessage labelled) {
		return !labelled.message().medications().isEmpty()
				&& labelled.expected().path("level").asString("").equals("same-day");
	}

	/** The listed wordings are held to by a test, so each counts three times. */
	private List<Example> lines(String file, boolean urgent) throws IOException {
		return Files.readAllLines(FIXTURES.resolve(file))
			.stream()
			.filter((line) -> !line.isBlank() && !line.startsWith("#"))
			.map((line) -> new Example(file, written(Annotation.of(this.reader.read(line, null), this.lexicon), null),
					ordinary(new OwnerMessage(line, Question.ANY, LISTED_AT, null, Set.of())), urgent, urgent))
			.flatMap((example) -> Stream.of(example, example, example))
			.toList();
	}

	private Example example(String file, LabelledMessage labelled) {
		String level = labelled.expected().path("level").asString("");
		boolean urgent = labelled.expected().path("urgent").asBoolean(Set.of("emergency", "same-day").contains(level));
		String name = labelled.message().dogName();
		Set<String> runs = written(Annotation.of(this.reader.read(labelled.message().text(), name), this.lexicon),
				name);
		return new Example(file, runs, ordinary(labelled.message()), urgent, urgent && !level.equals("same-day"));
	}

	private static Set<String> ordinary(OwnerMessage message) {
		Reading reading = MessageReader.standard().read(message);
		return OrdinaryFindings.of(reading.signs(), reading.overall(), !reading.walks().isEmpty()).names();
	}

	/** The runs of {@link WordRuns}, written out. */
	static Set<String> written(Annotation annotation, @Nullable String name) {
		Words words = annotation.words();
		String[] general = WordRuns.general(annotation, name);
		Set<String> runs = new TreeSet<>();
		for (int from = 0; from < words.size(); from++) {
			StringJoiner run = new StringJoiner(" ");
			for (int at = from; at < Math.min(words.size(), from + WordRuns.LONGEST); at++) {
				if (at > from && words.isSentenceBefore(at)) {
					break;
				}
				runs.add(run.add(general[at]).toString());
			}
		}
		return runs;
	}

	/** Weights of all runs that stand in several messages. */
	private record Weights(Map<String, Integer> places, Model urgent, Model emergency) {

		static Weights learned(List<Example> examples) {
			Map<String, Integer> counts = new TreeMap<>();
			examples.forEach((each) -> Stream.concat(each.runs().stream(), each.ordinary().stream())
				.forEach((run) -> counts.merge(run, 1, Integer::sum)));
			Map<String, Integer> places = new TreeMap<>();
			counts.forEach((run, count) -> {
				if (count >= FEWEST_MESSAGES) {
					places.put(run, places.size() + 1);
				}
			});
			Feature[][] rows = examples.stream().map((each) -> row(each, places)).toArray(Feature[][]::new);
			return new Weights(places, fitted(rows, places.size(), examples, false),
					fitted(rows, places.size(), examples, true));
		}

		private static Model fitted(Feature[][] rows, int places, List<Example> examples, boolean emergency) {
			Problem problem = new Problem();
			problem.l = rows.length;
			problem.n = places + 1;
			problem.bias = 1;
			problem.x = rows;
			problem.y = examples.stream()
				.mapToDouble((each) -> (emergency ? each.emergency() : each.urgent()) ? 1 : 0)
				.toArray();
			double share = java.util.Arrays.stream(problem.y).average().orElse(0.5);
			Parameter parameter = new Parameter(SolverType.L2R_LR, COST, 1e-4);
			parameter.setWeights(new double[] { 0.5 / share, 0.5 / (1 - share) }, new int[] { 1, 0 });
			return Linear.train(problem, parameter);
		}

		private static Feature[] row(Example example, Map<String, Integer> places) {
			double value = 1 / Math.sqrt(Math.max(1, example.runs().size()));
			Map<Integer, Double> values = new TreeMap<>(Map.of(places.size() + 1, 1.0));
			example.runs().stream().filter(places::containsKey).forEach((run) -> values.put(places.get(run), value));
			example.ordinary()
				.stream()
				.filter(places::containsKey)
				.forEach((name) -> values.put(places.get(name), OrdinaryFindings.VALUE));
			return values.entrySet()
				.stream()
				.map((entry) -> new FeatureNode(entry.getKey(), entry.getValue()))
				.toArray(Feature[]::new);
		}

		double urgent(Example example) {
			double[] chances = new double[2];
			Linear.predictProbability(this.urgent, row(example, this.places), chances);
			return chances[(this.urgent.getLabels()[0] == 1) ? 0 : 1];
		}

		private static double weight(Model model, int place) {
			return ((model.getLabels()[0] == 1) ? 1 : -1) * model.getFeatureWeights()[place - 1];
		}

		void write(Path file) throws IOException {
			List<String> lines = new ArrayList<>();
			lines.add("// run of words <tab> weight for urgent <tab> weight for emergency; learned, not written.");
			lines.add(line("", this.places.size() + 1));
			this.places.forEach((run, place) -> {
				if (Math.abs(weight(this.urgent, place)) >= LEAST_WEIGHT
						|| Math.abs(weight(this.emergency, place)) >= LEAST_WEIGHT) {
					lines.add(line(run, place));
				}
			});
			Files.write(file, lines);
		}

		private String line(String run, int place) {
			return String.format(Locale.ROOT, "%s\t%.2f\t%.2f", run, weight(this.urgent, place),
					weight(this.emergency, place));
		}

	}

}
