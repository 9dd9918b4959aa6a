package measuredwalk.reading.lexicon;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** The lexicon files that are packed in the jar. */
final class LexiconFiles {

	private static final String FOLDER = "/measuredwalk/reading/lexicon/";

	private LexiconFiles() {
	}

	/**
	 * The files that make up the standard lexicon, as {@code files.txt} names them.
	 * @return file names
	 */
	static List<String> standard() {
		return lines("files.txt");
	}

	/**
	 * A file's lines, without comments and empty ones.
	 * @param file its name
	 * @return its lines
	 */
	static List<String> lines(String file) {
		return rawLines(file).stream().map(LexiconFiles::withoutComment).filter((line) -> !line.isEmpty()).toList();
	}

	static List<String> rawLines(String file) {
		try (InputStream stream = LexiconFiles.class.getResourceAsStream(FOLDER + file)) {
			if (stream == null) {
				throw new IllegalStateException("The lexicon file " + FOLDER + file + " is not in the jar. "
						+ "Add it, or take its name out of files.txt.");
			}
			return new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8)).lines().toList();
		}
		catch (IOException ex) {
			throw new UncheckedIOException("The lexicon file " + FOLDER + file + " cannot be read.", ex);
		}
	}

	static String withoutComment(String line) {
		int comment = line.indexOf('#');
		return ((comment < 0) ? line : line.substring(0, comment)).strip();
	}

}
