package measuredwalk.reading.report;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import measuredwalk.reading.MessageReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import static org.assertj.core.api.Assertions.assertThat;

class ReadingAccuracyTests {

	private static final MessageReader READER = MessageReader.standard();

	private static final String MESSAGE = """
			{"id":"Z1","question":"walk","now":"2026-03-14T18:30","text":"20 minutes, a bit stiff zebra",\
			"expected":{"walks":[{"minutes":20}],"signs":[{"sign":"stiffness","present":true,"severity":"severe"}],\
			"overall":null,"urgent":false,"understood":true}}
			""";

	@TempDir
	Path folder = Path.of("");

	private String section(boolean untouched) throws IOException {
		Path file = Files.writeString(this.folder.resolve("messages.jsonl"), MESSAGE);
		OwnerSet set = new OwnerSet("messages", file, untouched);
		set.writeFaults(READER, this.folder.resolve("faults"));
		return String.join("\n", set.section(READER));
	}

	@Test
	void countsWhatWasReadRightAndWrong() throws IOException {
		assertThat(section(false)).contains("1 messages")
			.contains("| signs with presence | 1 | 1 | 0 | 0 | 100.0 % | 100.0 % | 100.0 % |")
			.contains("| severity | 1 | 0 | 1 | 1 | 0.0 % | 0.0 % | 0.0 % |")
			.contains("| side | 0 | 0 | 0 | 0 | - | - | - |")
			.contains("| severity | severe | mild | 1 |");
		assertThat(this.folder.resolve("faults").resolve("messages.jsonl.txt")).content().contains("zebra");
	}

	@Test
	void tellsNoMessageAndNoConfusionOfAnUntouchedPart() throws IOException {
		assertThat(section(true)).contains("| severity | 1 | 0 | 1 | 1 |")
			.doesNotContain("zebra")
			.doesNotContain("Z1")
			.doesNotContain("severe");
		assertThat(this.folder.resolve("faults")).doesNotExist();
	}

	@Test
	void isWrittenEvenWhereUntouchedPartsAreAbsent() {
		List<OwnerSet> absent = List.of(new OwnerSet("untouched", this.folder.resolve("absent.jsonl"), true));
		assertThat(ReadingAccuracy.ownersMessages(READER, absent, absent))
			.contains("`absent.jsonl` is not there; nothing was measured.")
			.anyMatch((line) -> line.startsWith("| untouched (not there) |"));
	}

}
