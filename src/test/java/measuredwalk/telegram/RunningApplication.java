package measuredwalk.telegram;

import java.io.IOException;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;

import com.fasterxml.jackson.core.JacksonException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import org.awaitility.Awaitility;

import static org.assertj.core.api.Assertions.assertThat;

/** The application as a process of its own, on an embedded database in a file. */
final class RunningApplication {

	private static final String USER = "clinic";

	private static final String PASSWORD = "a-password-for-tests";

	/** TimeoutStopSec of docs/operator/measured-walk.service, and Docker's is 10 s. */
	private static final Duration UNTIL_KILLED = Duration.ofSeconds(40);

	private final ObjectMapper mapper = new ObjectMapper();

	private final HttpClient http = HttpClient.newHttpClient();

	private final Path folder;

	private final BotApiStandIn api;

	private final int port;

	private Process process;

	private int starts;

	private final Supplier<List<String>> command;

	private final List<String> settings;

	/** One to be killed: on an embedded database in a file, and quick to send. */
	RunningApplication(Path folder, BotApiStandIn api, ShippedJar jar) throws IOException {
		this(folder, api, jar::command, List.of("--spring.datasource.url=" + databaseUrl(folder),
				"--measuredwalk.telegram.chat-pause=1ms", "--measuredwalk.telegram.messages-per-second=200"));
	}

	/**
	 * An application of one's own making.
	 * @param command the beginning of the command that starts it, asked for each start
	 * @param settings its settings but those of the port, the stand-in and the staff
	 */
	RunningApplication(Path folder, BotApiStandIn api, Supplier<List<String>> command, List<String> settings)
			throws IOException {
		this.folder = folder;
		this.api = api;
		this.command = command;
		this.settings = List.copyOf(settings);
		try (ServerSocket free = new ServerSocket(0)) {
			this.port = free.getLocalPort();
		}
	}

	String databaseUrl() {
		return databaseUrl(this.folder);
	}

	private static String databaseUrl(Path folder) {
		return "jdbc:h2:file:" + folder.resolve("killed") + ";MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;"
				+ "DEFAULT_NULL_ORDERING=HIGH;DB_CLOSE_ON_EXIT=FALSE";
	}

	/** Each start sends to an address of its own, with the number of the start behind. */
	void start() throws IOException {
		List<String> all = new ArrayList<>(this.command.get());
		all.addAll(List.of("--server.port=" + this.port, "--measuredwalk.rehearsal=false",
				"--measuredwalk.telegram.token=" + BotApiStandIn.TOKEN,
				"--measuredwalk.telegram.api-url=" + this.api.url() + "/" + ++this.starts,
				"--measuredwalk.clinic.phone=01632 960 151", "--measuredwalk.staff.username=" + USER,
				"--measuredwalk.staff.password=" + PASSWORD, "--logging.structured.format.console=ecs"));
		all.addAll(this.settings);
		this.process = new ProcessBuilder(all).directory(this.folder.toFile())
			.redirectErrorStream(true)
			.redirectOutput(ProcessBuilder.Redirect.appendTo(this.folder.resolve("log").toFile()))
			.start();
	}

	/** The processor time that this start has used so far. */
	Duration processorTime() {
		return this.process.info().totalCpuDuration().orElse(Duration.ZERO);
	}

	void awaitReady() {
		Awaitility.await()
			.atMost(Duration.ofSeconds(120))
			.ignoreExceptions()
			.until(() -> get("/actuator/health") != null);
	}

	/** As {@code kill -9} does. */
	void kill() {
		this.process.destroyForcibly();
	}

	/** As SIGTERM does. */
	void askToStop() {
		this.process.destroy();
	}

	/**
	 * Waits for the end, as long as a service manager would, and gives the exit status.
	 */
	int awaitDeath() throws InterruptedException {
		assertThat(this.process.waitFor(UNTIL_KILLED.toSeconds(), TimeUnit.SECONDS)).as("has ended in time").isTrue();
		return this.process.exitValue();
	}

	void stop() throws InterruptedException {
		askToStop();
		// An archive that is written at the end may take its time.
		this.process.waitFor();
	}

	JsonNode post(String path, String body) throws IOException, InterruptedException {
		return send(request(path).header("Content-Type", "application/json")
			.POST(HttpRequest.BodyPublishers.ofString(body))
			.build());
	}

	JsonNode get(String path) throws IOException, InterruptedException {
		return send(request(path).build());
	}

	/**
	 * Each line is one JSON object, and none holds what nobody is to read there. A start
	 * that was killed at once may not have said that it was ready, and a kill may cut a
	 * line, which the next start goes on.
	 */
	void assertLog(List<String> neverLogged) throws IOException {
		List<String> lines = Files.readAllLines(this.folder.resolve("log"))
			.stream()
			.filter((line) -> !line.startsWith("Picked up JAVA_TOOL_OPTIONS"))
			.toList();
		assertThat(lines).filteredOn((line) -> line.contains("Measured Walk is ready")).hasSizeBetween(1, this.starts);
		List<String> secret = new ArrayList<>(neverLogged);
		secret.addAll(List.of(PASSWORD, BotApiStandIn.TOKEN));
		assertThat(lines).filteredOn((line) -> !isWhole(line)).hasSizeLessThan(this.starts);
		assertThat(lines).allSatisfy((line) -> assertThat(line).doesNotContain(secret));
	}

	private boolean isWhole(String line) {
		try {
			return !this.mapper.readTree(line).path("log").path("level").asText().isEmpty();
		}
		catch (JacksonException ex) {
			return false;
		}
	}

	private HttpRequest.Builder request(String path) {
		String login = Base64.getEncoder().encodeToString((USER + ":" + PASSWORD).getBytes(StandardCharsets.UTF_8));
		return HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + this.port + path))
			.header("Authorization", "Basic " + login);
	}

	private JsonNode send(HttpRequest request) throws IOException, InterruptedException {
		HttpResponse<String> response = this.http.send(request, HttpResponse.BodyHandlers.ofString());
		if (response.statusCode() >= 300) {
			throw new IOException("Answered " + response.statusCode() + ": " + response.body());
		}
		return this.mapper.readTree(response.body());
	}

}
