package measuredwalk.clinic.backup;

import java.io.IOException;
import java.io.InputStream;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;

import measuredwalk.ChatVisitor;
import measuredwalk.MeasuredWalk;
import measuredwalk.clinic.Caller;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.web.server.context.WebServerApplicationContext;
import org.springframework.context.ConfigurableApplicationContext;

import static org.assertj.core.api.Assertions.assertThat;

/** The program runs on what a backup gives back. */
class BackupTests {

	private static final String ADMIN = "clinic:rehearsal";

	@TempDir
	private Path folder;

	@Test
	void aBackupTakenWhilePeopleWriteBringsEverythingBack() throws IOException {
		Path backups = this.folder.resolve("backups");
		String before;
		try (ConfigurableApplicationContext running = start(this.folder.resolve("first"), backups)) {
			new ChatVisitor(port(running), "wren").say("25 minutes, a bit stiff on the back left");
			before = journal(running);
			HttpResponse<String> answer = new Caller(port(running)).api("POST", "/api/backups", ADMIN, "");
			assertThat(answer.statusCode()).isEqualTo(201);
			assertThat(Caller.json(answer).get("bytes").asLong()).isPositive();
			new ChatVisitor(port(running), "wren").say("and another 10 minutes at noon");
		}
		unzip(onlyFileIn(backups), this.folder.resolve("second"));
		try (ConfigurableApplicationContext running = start(this.folder.resolve("second"), backups)) {
			assertThat(before).contains("a bit stiff on the back left");
			assertThat(journal(running)).isEqualTo(before);
		}
	}

	private static ConfigurableApplicationContext start(Path data, Path backups) {
		return SpringApplication.run(MeasuredWalk.class, "--server.port=0", "--measuredwalk.rehearsal=true",
				"--measuredwalk.backup-folder=" + backups,
				"--spring.datasource.url=jdbc:h2:file:" + data.resolve("walks")
						+ ";MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH;DB_CLOSE_ON_EXIT=FALSE");
	}

	private static int port(ConfigurableApplicationContext running) {
		return ((WebServerApplicationContext) running).getWebServer().getPort();
	}

	private static String journal(ConfigurableApplicationContext running) {
		Caller caller = new Caller(port(running));
		String dog = Caller.json(caller.api("GET", "/api/dogs", ADMIN, "")).get(0).get("id").asString();
		return caller.api("GET", "/api/dogs/" + dog + "/journal?history=true", ADMIN, "").body();
	}

	private static Path onlyFileIn(Path folder) throws IOException {
		try (var files = Files.list(folder)) {
			return files.toList().get(0);
		}
	}

	private static void unzip(Path zip, Path folder) throws IOException {
		Files.createDirectories(folder);
		try (InputStream file = Files.newInputStream(zip); ZipInputStream content = new ZipInputStream(file)) {
			for (ZipEntry entry = content.getNextEntry(); entry != null; entry = content.getNextEntry()) {
				Files.copy(content, folder.resolve(Path.of(entry.getName()).getFileName()));
			}
		}
	}

}
