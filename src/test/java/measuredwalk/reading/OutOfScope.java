package measuredwalk.reading;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.stream.Collectors;

/** The lines of the public sets that are scored apart, each named with its reason. */
public final class OutOfScope {

	private OutOfScope() {
	}

	/**
	 * The ids of these lines.
	 * @return such as {@code durations-0086}
	 */
	public static Set<String> ids() {
		try (var lines = Files.lines(Path.of("fixtures", "public", "language", "out-of-scope.tsv"))) {
			return lines.filter((line) -> !line.startsWith("#"))
				.map((line) -> line.substring(0, line.indexOf('\t')))
				.collect(Collectors.toSet());
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

}
