package measuredwalk.reading.quantity;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.function.Consumer;

/** A lexicon file: words apart by blanks, one entry a line, '#' for remarks. */
final class LexiconFile {

	private LexiconFile() {
	}

	/**
	 * Reads a file that is packed beside this class.
	 * @param name name of the file
	 * @param entry gets the words of each line
	 * @throws IllegalStateException when a line is wrong; the message names file and line
	 */
	static void read(String name, Consumer<String[]> entry) {
		try (InputStream stream = LexiconFile.class.getResourceAsStream(name)) {
			if (stream == null) {
				throw new IllegalStateException("The lexicon file " + name + " is not packed: build the jar again");
			}
			readLines(name, new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8)), entry);
		}
		catch (IOException ex) {
			throw new UncheckedIOException("The lexicon file " + name + " cannot be read", ex);
		}
	}

	private static void readLines(String name, BufferedReader lines, Consumer<String[]> entry) throws IOException {
		int number = 0;
		for (String line = lines.readLine(); line != null; line = lines.readLine()) {
			number++;
			if (!line.isBlank() && !line.startsWith("#")) {
				accept(name, number, line, entry);
			}
		}
	}

	private static void accept(String name, int number, String line, Consumer<String[]> entry) {
		try {
			entry.accept(line.trim().split(" +"));
		}
		catch (IllegalArgumentException | IndexOutOfBoundsException ex) {
			throw new IllegalStateException(
					name + " line " + number + ": '" + line + "' has not the form told at the top of the file", ex);
		}
	}

}
