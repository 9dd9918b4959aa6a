package measuredwalk.command;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintStream;
import java.util.List;
import java.util.Optional;

/** A tool of the jar that turns JSON Lines on standard input into JSON Lines. */
@FunctionalInterface
public interface Tool {

	/**
	 * Answers every line of the input, flushed one by one, until the input ends.
	 * @param input lines of JSON
	 * @param output where the answers go
	 * @throws IOException when the input cannot be read
	 */
	void run(BufferedReader input, PrintStream output) throws IOException;

	/**
	 * Finds the tool that the words of the command line ask for.
	 * @param words the command line
	 * @return the tool, or empty when the words ask for the server
	 */
	static Optional<Tool> named(List<String> words) {
		return switch (String.join(" ", words)) {
			case "read" -> Optional.of(new Read());
			case "read context" -> Optional.of(new ReadContext());
			case "read quantities" -> Optional.of(new ReadQuantities());
			default -> Optional.empty();
		};
	}

}
