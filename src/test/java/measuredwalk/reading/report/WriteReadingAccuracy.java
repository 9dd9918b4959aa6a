package measuredwalk.reading.report;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;

import measuredwalk.reading.MessageReader;
import org.junit.jupiter.api.Test;

import static org.assertj.core.api.Assertions.assertThat;

/** Writes {@code docs/reading-accuracy.md}; run by the profile {@code reading-report}. */
class WriteReadingAccuracy {

	@Test
	void writesThePage() throws IOException {
		Path page = Path.of("docs", "reading-accuracy.md");
		MessageReader reader = MessageReader.standard();
		Files.writeString(page, ReadingAccuracy.page(reader, LocalDate.now(ZoneOffset.UTC)));
		ReadingAccuracy.writeFaults(reader, Path.of("target", "reading-report"));
		assertThat(page).content().contains("## Public sets");
	}

}
