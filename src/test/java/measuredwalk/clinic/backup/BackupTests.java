package measuredwalk.clinic.backup;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Stream;

import javax.sql.DataSource;

import measuredwalk.ChatVisitor;
import measuredwalk.Databases;
import measuredwalk.MeasuredWalk;
import measuredwalk.clinic.Caller;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.jdbc.DataSourceBuilder;
import org.springframework.boot.web.server.context.WebServerApplicationContext;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.test.context.DynamicPropertyRegistry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

/** The program runs on what a backup gives back, on either kind of database. */
class BackupTests {

	private static final String ADMIN = "clinic:rehearsal";

	private final ByteArrayOutputStream told = new ByteArrayOutputStream();

	@TempDir
	private Path folder;

	private Path backups = Path.of("");

	@Test
	void backupsTakenWhilePeopleWriteBringEverythingBackFromEitherDatabaseIntoEither() throws IOException {
		Map<String, String> settings = settings(Databases::h2);
		String before = "";
		List<Consumer<DynamicPropertyRegistry>> next = List.of(Databases::h2, Databases::postgres, Databases::postgres,
				Databases::h2);
		for (int step = 0; step <= next.size(); step++) {
			this.backups = this.folder.resolve("backups" + step);
			try (ConfigurableApplicationContext running = start(settings)) {
				assertThat(everything(running)).contains(before);
				before = afterAnother(step, running);
			}
			if (step < next.size()) {
				settings = settings(next.get(step));
				assertThat(restore(settings, onlyBackup())).as(this.told.toString(StandardCharsets.UTF_8)).isZero();
			}
		}
	}

	/**
	 * The whole journal after another message, as a backup that was begun then holds it.
	 */
	private static String afterAnother(int step, ConfigurableApplicationContext running) {
		ChatVisitor wren = new ChatVisitor(port(running), "wren");
		String text = step + 20 + " minutes, a bit stiff \u2013 \\n ";
		wren.say(text);
		String journal = everything(running);
		assertThat(Caller.json(new Caller(port(running)).api("POST", "/api/backups", ADMIN, "")).get("bytes").asLong())
			.isPositive();
		wren.say("and another 10 minutes at noon");
		assertThat(journal).contains(step + 20 + " minutes, a bit stiff \u2013 \\\\n");
		return journal;
	}

	@Test
	void nothingIsWrittenOverAndNoOtherFileIsTaken() throws IOException {
		Map<String, String> used = settings(Databases::h2);
		this.backups = this.folder.resolve("backups");
		try (ConfigurableApplicationContext running = start(used)) {
			new Caller(port(running)).api("POST", "/api/backups", ADMIN, "");
			assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(onlyBackup())))
				.as("others may not read what households told")
				.isEqualTo("rw-------");
			assertThat(restore(used, onlyBackup())).isEqualTo(1);
		}
		Path other = Files.writeString(this.folder.resolve("other.zip"), "no zip");
		assertThat(restore(settings(Databases::h2), other)).isEqualTo(1);
		assertThat(restore(settings(Databases::h2), this.folder.resolve("none.zip"))).isEqualTo(1);
		assertThat(this.told.toString(StandardCharsets.UTF_8)).contains("is not empty", "no zip file",
				"check that it is there");
	}

	/**
	 * What the settings of a test name, without a context; H2 in memory lives until the
	 * end.
	 */
	private static Map<String, String> settings(Consumer<DynamicPropertyRegistry> database) {
		Map<String, String> settings = new LinkedHashMap<>(Map.of("spring.datasource.username", "sa"));
		database.accept((name, value) -> settings.put(name, String.valueOf(value.get())));
		return settings;
	}

	private int restore(Map<String, String> settings, Path file) {
		DataSource database = DataSourceBuilder.create()
			.url(settings.get("spring.datasource.url"))
			.username(settings.get("spring.datasource.username"))
			.password(settings.getOrDefault("spring.datasource.password", ""))
			.build();
		return RestoreTool.restore(database, file, new PrintStream(this.told, true, StandardCharsets.UTF_8));
	}

	private ConfigurableApplicationContext start(Map<String, String> settings) {
		return SpringApplication.run(MeasuredWalk.class,
				Stream
					.concat(Stream.of("--server.port=0", "--measuredwalk.rehearsal=true",
							"--measuredwalk.backup-folder=" + this.backups),
							settings.entrySet().stream().map((each) -> "--" + each.getKey() + "=" + each.getValue()))
					.toArray(String[]::new));
	}

	private static int port(ConfigurableApplicationContext running) {
		return ((WebServerApplicationContext) running).getWebServer().getPort();
	}

	private static String everything(ConfigurableApplicationContext running) {
		Caller caller = new Caller(port(running));
		String dog = Caller.json(caller.api("GET", "/api/dogs", ADMIN, "")).get(0).get("id").asString();
		return caller.api("GET", "/api/dogs/" + dog + "/journal?history=true", ADMIN, "").body();
	}

	private Path onlyBackup() throws IOException {
		try (Stream<Path> files = Files.list(this.backups)) {
			return files.reduce((one, other) -> fail("more than one file")).orElseThrow();
		}
	}

}
