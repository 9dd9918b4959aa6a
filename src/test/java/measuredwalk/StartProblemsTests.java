package measuredwalk;

import java.nio.file.Files;
import java.nio.file.Path;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.boot.builder.SpringApplicationBuilder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;

class StartProblemsTests {

	private static final String MEMORY = "--spring.datasource.url=jdbc:h2:mem:problems;MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE";

	@TempDir
	private Path folder;

	private static String startWith(String... arguments) {
		Throwable failure = catchThrowable(() -> new SpringApplicationBuilder(MeasuredWalk.class).run(arguments));
		assertThat(failure).isNotNull();
		return new StartProblems(null).line(failure).orElse("no line for " + failure);
	}

	@Test
	void aPortThatIsNoNumberIsNamed() {
		assertThat(startWith(MEMORY, "--server.port=abc")).startsWith("server.port is 'abc'");
	}

	@Test
	void anUnknownTimeZoneIsNamed() {
		assertThat(startWith(MEMORY, "--measuredwalk.time-zone=Mars")).startsWith("measuredwalk.time-zone is 'Mars'");
	}

	@Test
	void aPublicBotInRehearsalIsRefused() {
		assertThat(startWith(MEMORY, "--measuredwalk.rehearsal=true", "--measuredwalk.telegram.token=1:x"))
			.startsWith("measuredwalk.rehearsal is true while measuredwalk.telegram.token is set");
	}

	@Test
	void aFolderOfConversationsThatIsNotThereIsNamed() {
		String missing = this.folder.resolve("none").toString();
		assertThat(startWith(MEMORY, "--server.port=0", "--measuredwalk.conversations=" + missing))
			.startsWith("measuredwalk.conversations names the folder '" + missing);
	}

	@Test
	void aDamagedDatabaseIsNamed() throws Exception {
		Files.write(this.folder.resolve("damaged.mv.db"), new byte[20_000]);
		assertThat(
				startWith("--server.port=0", "--spring.datasource.url=jdbc:h2:file:" + this.folder.resolve("damaged")))
			.startsWith("spring.datasource.url names the database");
	}

}
