package measuredwalk.reading.gloss;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * One file of a language's folder, without comments and empty lines.
 *
 * @param name folder and file
 * @param lines what stands in it
 */
record GlossaryFile(String name, List<Line> lines) {

	private static final String FOLDER = "/measuredwalk/reading/lexicon/";

	/**
	 * A line that is no comment.
	 *
	 * @param file the file's name
	 * @param number from 1
	 * @param text without blanks at its ends
	 */
	record Line(String file, int number, String text) {

		IllegalStateException error(String what, String fix) {
			return new IllegalStateException(this.file + ", line " + this.number + ": " + what + ". " + fix + ".");
		}

	}

	static GlossaryFile read(String name) {
		try (InputStream stream = GlossaryFile.class.getResourceAsStream(FOLDER + name)) {
			if (stream == null) {
				throw new IllegalStateException("The file " + FOLDER + name
						+ " is not in the jar. Add it, or take its name out of the list that names it.");
			}
			return of(name, new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8)).lines().toList());
		}
		catch (IOException ex) {
			throw new UncheckedIOException("The file " + FOLDER + name + " cannot be read.", ex);
		}
	}

	static GlossaryFile of(String name, List<String> raw) {
		List<Line> lines = new ArrayList<>();
		for (int index = 0; index < raw.size(); index++) {
			String text = withoutComment(raw.get(index));
			if (!text.isEmpty()) {
				lines.add(new Line(name, index + 1, text));
			}
		}
		return new GlossaryFile(name, lines);
	}

	private static String withoutComment(String line) {
		int comment = line.indexOf('#');
		return ((comment < 0) ? line : line.substring(0, comment)).strip();
	}

}
