package measuredwalk.reading.fuzz;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** The texts that the reader could not bear, one file each. */
final class Crashes {

	private static final Path FOLDER = Path.of("fixtures", "reading", "crashes");

	private Crashes() {
	}

	/** Checks a text; one that fails is written down before the failure goes on. */
	static void keepIfItFails(String text) {
		try {
			SoundReading.check(text);
		}
		catch (RuntimeException | Error ex) {
			keep(text);
			throw ex;
		}
	}

	private static void keep(String text) {
		try {
			Files.createDirectories(FOLDER);
			Files.writeString(FOLDER.resolve(String.format(Locale.ROOT, "%08x.txt", text.hashCode())), escaped(text));
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

	/** Java's escapes keep what a text file cannot, such as half a surrogate pair. */
	static String escaped(String text) {
		StringBuilder escaped = new StringBuilder();
		text.chars()
			.forEach((unit) -> escaped.append((unit >= ' ' && unit < 127 && unit != '\\') ? Character.toString(unit)
					: String.format(Locale.ROOT, "\\u%04x", unit)));
		return escaped.append('\n').toString();
	}

	static List<Path> files() throws IOException {
		try (Stream<Path> files = Files.list(FOLDER)) {
			return files.filter((file) -> file.toString().endsWith(".txt")).sorted().toList();
		}
	}

	static String text(Path file) throws IOException {
		return unescaped(Files.readString(file).lines().findFirst().orElse(""));
	}

	static String unescaped(String escaped) {
		StringBuilder text = new StringBuilder();
		for (int at = 0; at < escaped.length(); at++) {
			if (escaped.startsWith("\\u", at)) {
				text.append((char) Integer.parseInt(escaped, at + 2, at + 6, 16));
				at += 5;
			}
			else {
				text.append(escaped.charAt(at));
			}
		}
		return text.toString();
	}

}
