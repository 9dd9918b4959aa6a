package measuredwalk.reading.score;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import measuredwalk.reading.MessageReader;

/**
 * Scores files of labelled messages and lists the faults in
 * {@code target/reading-report}.
 */
public final class ScoreFiles {

	private ScoreFiles() {
	}

	/**
	 * Scores files.
	 * @param files JSON Lines, each scored by itself
	 * @throws IOException when a report cannot be written
	 */
	public static void main(String[] files) throws IOException {
		MessageReader reader = MessageReader.standard();
		Path folder = Files.createDirectories(Path.of("target", "reading-report"));
		for (String file : files) {
			Path path = Path.of(file);
			Scorecard card = Scorecard.of(reader, LabelledMessage.read(path));
			List<String> report = new ArrayList<>(card.lines());
			System.out.println(path);
			report.forEach(System.out::println);
			report.addAll(card.failures());
			Files.write(folder.resolve(name(path) + ".txt"), report);
		}
	}

	private static String name(Path path) {
		return (path.getNameCount() < 2) ? path.toString()
				: path.getName(path.getNameCount() - 2) + "-" + path.getFileName();
	}

}
