package measuredwalk.clinic.access;

import java.net.http.HttpResponse;
import java.util.List;
import java.util.UUID;

import measuredwalk.ChatVisitor;
import measuredwalk.clinic.Caller;
import measuredwalk.clinic.RunningClinic;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.system.CapturedOutput;
import org.springframework.boot.test.system.OutputCaptureExtension;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.jdbc.core.simple.JdbcClient;
import tools.jackson.databind.JsonNode;

import static org.assertj.core.api.Assertions.assertThat;

/** What docs/security.md promises of the web side, threat by threat. */
@RunningClinic
@ExtendWith(OutputCaptureExtension.class)
class ThreatTests {

	private static final String STAFF = "clinic:rehearsal";

	private static final String SCRIPT = "<script>alert(1)</script>";

	@LocalServerPort
	private int port;

	@Autowired
	private JdbcClient database;

	private Caller caller;

	@BeforeEach
	void call() {
		this.caller = new Caller(this.port);
	}

	@Test
	void aSessionFromBeforeTheLoginIsWorthNothingAfterIt() {
		HttpResponse<String> before = this.caller.get("/clinic/login");
		HttpResponse<String> after = this.caller.login("clinic", "rehearsal");
		assertThat(session(before)).isNotEmpty();
		assertThat(session(after)).isNotEmpty().isNotEqualTo(session(before));
		HttpResponse<String> withTheOldOne = new Caller(this.port).get("/clinic", "Cookie",
				"JSESSIONID=" + session(before));
		assertThat(withTheOldOne.statusCode()).isEqualTo(302);
	}

	private static String session(HttpResponse<String> answer) {
		return answer.headers()
			.allValues("Set-Cookie")
			.stream()
			.filter((cookie) -> cookie.startsWith("JSESSIONID="))
			.map((cookie) -> cookie.substring("JSESSIONID=".length(), cookie.indexOf(';')))
			.findFirst()
			.orElse("");
	}

	@Test
	void theSessionIsKeptFromScriptsAndFromOtherSites() {
		assertThat(this.caller.get("/clinic/login").headers().allValues("Set-Cookie"))
			.anyMatch((cookie) -> cookie.contains("HttpOnly") && cookie.contains("SameSite=Lax"));
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', value = { "X-Content-Type-Options | nosniff", "X-Frame-Options | DENY",
			"Cache-Control | no-cache, no-store, max-age=0, must-revalidate", "Referrer-Policy | same-origin" })
	void everyPageSaysToTheBrowser(String header, String expected) {
		this.caller.login("clinic", "rehearsal");
		for (String page : List.of("/", "/clinic/login", "/clinic", "/clinic/dogs")) {
			assertThat(this.caller.get(page).headers().firstValue(header)).as(page).contains(expected);
		}
	}

	@ParameterizedTest
	@ValueSource(strings = { "/", "/clinic/login", "/clinic", "/clinic/dogs", "/clinic/settings" })
	void noPageTakesScriptFromElsewhereOrFromItsOwnText(String page) {
		this.caller.login("clinic", "rehearsal");
		HttpResponse<String> answer = this.caller.get(page);
		String policy = answer.headers().firstValue("Content-Security-Policy").orElse("");
		assertThat(policy).contains("default-src 'self'", "object-src 'none'", "frame-ancestors 'none'")
			.doesNotContain("unsafe");
		assertThat(answer.body()).doesNotContainPattern("<script>|<script (?!src=\"/)|\\son\\w+=\"|javascript:|//cdn");
	}

	@Test
	void scriptInADogsNameOrACarersWordsIsShownAsText() {
		JsonNode enrolled = enrolled(SCRIPT);
		String id = enrolled.get("id").asString();
		ChatVisitor sloe = new ChatVisitor(this.port, "sloe");
		sloe.say("/start " + enrolled.get("joinCode").asString());
		sloe.say("20 minutes " + SCRIPT);
		this.caller.login("clinic", "rehearsal");
		for (String page : List.of("/clinic", "/clinic/dogs", "/clinic/dogs/" + id, "/?as=sloe")) {
			assertThat(this.caller.get(page).body()).as(page).doesNotContain(SCRIPT);
		}
		assertThat(this.caller.get("/clinic/dogs/" + id).body()).contains("20 minutes &lt;script&gt;");
	}

	@Test
	void scriptInAnAlertOrInTheNoteOnItIsShownAsText() {
		new ChatVisitor(this.port, "wren").say("she collapsed " + SCRIPT);
		String alert = Caller.json(this.caller.api("GET", "/api/alerts?status=open", STAFF, ""))
			.get(0)
			.get("id")
			.asString();
		this.caller.api("POST", "/api/alerts/" + alert + "/acknowledge", STAFF, "{'note':'" + SCRIPT + "'}");
		String thistle = "/clinic/dogs/" + dogNamed("Thistle");
		this.caller.login("clinic", "rehearsal");
		for (String page : List.of("/clinic", "/clinic/alerts/" + alert, thistle, thistle + "/report", "/?as=wren")) {
			assertThat(this.caller.get(page).body()).as(page).doesNotContain(SCRIPT);
		}
		assertThat(this.caller.get("/clinic/alerts/" + alert).body()).containsPattern("(?s)&lt;script.*&lt;script");
	}

	@Test
	void anIdThatIsGuessedLeadsNowhere() {
		for (String path : List.of("", "/journal", "/suggestion", "/export")) {
			assertThat(this.caller.api("GET", "/api/dogs/" + UUID.randomUUID() + path, STAFF, "").statusCode())
				.isEqualTo(404);
		}
	}

	@Test
	void passwordsAreStoredAsSlowHashesOnly() {
		assertThat(this.database.sql("select password_hash from staff_account").query(String.class).list()).isNotEmpty()
			.allMatch((hash) -> hash.startsWith("$2a$10$"));
	}

	@Test
	void neitherPasswordsNorOwnersWordsAreLogged(CapturedOutput log) {
		this.caller.login("clinic", "not-the-password");
		this.caller.api("GET", "/api/dogs", "clinic:nor-this-one", "");
		new ChatVisitor(this.port, "alder").say("12 minutes as far as the ropewalk and a bit stiff");
		assertThat(log.getAll()).doesNotContain("not-the-password", "nor-this-one", "ropewalk");
	}

	@Test
	void nothingOfTheInsideIsShownWhenSomethingGoesWrong() {
		HttpResponse<String> answer = this.caller.api("POST", "/api/dogs", STAFF, "{'name':");
		assertThat(answer.body()).doesNotContain("Exception", "measuredwalk.", "org.springframework");
	}

	@ParameterizedTest
	@ValueSource(strings = { "/actuator", "/actuator/env", "/actuator/heapdump", "/actuator/loggers", "/h2-console" })
	void noInsideDoorIsOpen(String path) {
		assertThat(this.caller.api("GET", path, STAFF, "").statusCode()).isIn(401, 403, 404);
	}

	private String enrol(String name) {
		return enrolled(name).get("id").asString();
	}

	private JsonNode enrolled(String name) {
		return Caller.json(this.caller.api("POST", "/api/dogs", STAFF,
				"{'name':'" + name + "','timeZone':'Europe/London','planMinutes':20}"));
	}

	private String dogNamed(String name) {
		return this.database.sql("select id from dog where name = ?").param(name).query(UUID.class).single().toString();
	}

}
