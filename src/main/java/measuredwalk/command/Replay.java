package measuredwalk.command;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintStream;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import measuredwalk.tolerance.ToleranceCourse;
import measuredwalk.tolerance.ToleranceEvent;
import measuredwalk.tolerance.ToleranceModel;
import measuredwalk.tolerance.WalkPlan;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.json.JsonMapper;

/**
 * The {@code replay} tool: events of many dogs in, a suggestion out for each that asks.
 */
final class Replay implements Tool {

	private final JsonMapper json = new JsonMapper();

	private final ToleranceModel model = new ToleranceModel();

	private final Map<String, ToleranceCourse> dogs = new HashMap<>();

	private final Map<String, WalkPlan> plans = new HashMap<>();

	@Override
	public void run(BufferedReader input, PrintStream output) throws IOException {
		int number = 0;
		for (String line = input.readLine(); line != null; line = input.readLine()) {
			number++;
			answer(number, line).ifPresent((answer) -> print(output, answer));
		}
	}

	private void print(PrintStream output, Map<String, Object> answer) {
		output.print(this.json.writeValueAsString(answer) + "\n");
		output.flush();
	}

	private Optional<Map<String, Object>> answer(int number, String line) {
		try {
			return line.isBlank() ? Optional.empty() : answer(new ReplayLine(this.json.readTree(line)));
		}
		catch (JacksonException ex) {
			return Optional.of(error(number, "not valid JSON: " + ex.getOriginalMessage()));
		}
		catch (IllegalArgumentException ex) {
			return Optional.of(error(number, String.valueOf(ex.getMessage())));
		}
	}

	private static Map<String, Object> error(int number, String message) {
		Map<String, Object> error = new LinkedHashMap<>();
		error.put("line", number);
		error.put("error", message);
		return error;
	}

	private Optional<Map<String, Object>> answer(ReplayLine line) {
		String dog = line.dog();
		if (line.isSuggest()) {
			return Optional.of(ReplayAnswer.of(dog, course(dog).suggest(line.date())));
		}
		ToleranceEvent event = line.event(this.plans.get(dog));
		if (event instanceof ToleranceEvent.DogEnrolled enrolled) {
			enrol(dog, enrolled);
		}
		else {
			course(dog).tell(event);
		}
		if (event instanceof ToleranceEvent.PlanChanged changed) {
			this.plans.put(dog, changed.plan());
		}
		return Optional.empty();
	}

	private void enrol(String dog, ToleranceEvent.DogEnrolled enrolled) {
		if (this.dogs.containsKey(dog)) {
			throw new IllegalArgumentException("dog '" + dog + "' is known already");
		}
		this.dogs.put(dog, this.model.follow(List.of(enrolled)));
		this.plans.put(dog, enrolled.plan());
	}

	private ToleranceCourse course(String dog) {
		ToleranceCourse course = this.dogs.get(dog);
		if (course == null) {
			throw new IllegalArgumentException("dog '" + dog + "' is not known: its 'dog' event must come first");
		}
		return course;
	}

}
