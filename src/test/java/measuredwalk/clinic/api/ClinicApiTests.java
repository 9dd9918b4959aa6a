package measuredwalk.clinic.api;

import java.net.http.HttpResponse;

import measuredwalk.clinic.Caller;
import measuredwalk.clinic.RunningClinic;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.boot.test.web.server.LocalServerPort;
import tools.jackson.databind.JsonNode;

import static org.assertj.core.api.Assertions.assertThat;

@RunningClinic
class ClinicApiTests {

	private static final String STAFF = "clinic:rehearsal";

	private static final String NO_DOG = "/api/dogs/8b1d63f4-0000-4000-8000-000000000000";

	@LocalServerPort
	private int port;

	private Caller caller;

	@BeforeEach
	void call() {
		this.caller = new Caller(this.port);
	}

	private String enrol(String name) {
		HttpResponse<String> answer = this.caller.api("POST", "/api/dogs", STAFF,
				"{'name':'" + name + "','timeZone':'Europe/London','planMinutes':20}");
		assertThat(answer.statusCode()).isEqualTo(201);
		return Caller.json(answer).get("id").asString();
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', quoteCharacter = '"', value = { "GET | /api/dogs | nobody:wrong | '' | 401",
			"GET | /api/dogs/17 | clinic:rehearsal | '' | 400", "GET | " + NO_DOG + " | clinic:rehearsal | '' | 404",
			"GET | " + NO_DOG + "/journal | clinic:rehearsal | '' | 404",
			"GET | /api/cats | clinic:rehearsal | '' | 404", "PUT | /api/dogs | clinic:rehearsal | {} | 405",
			"POST | /api/dogs | clinic:rehearsal | not JSON | 400",
			"POST | /api/dogs | clinic:rehearsal | {'name':'Moss'} | 400",
			"POST | /api/dogs | clinic:rehearsal | {'name':'Moss','timeZone':'Europe/London','planMinutes':'many'} | 400",
			"GET | /api/alerts?status=lost | clinic:rehearsal | '' | 400",
			"GET | /api/dogs?size=0 | clinic:rehearsal | '' | 400",
			"POST | " + "/api/alerts/8b1d63f4-0000-4000-8000-000000000000/close | clinic:rehearsal | '' | 404" })
	void errorsAreProblemDetails(String method, String path, String account, String body, int status) {
		HttpResponse<String> answer = this.caller.api(method, path, account, body.replace("''", ""));
		assertThat(answer.statusCode()).isEqualTo(status);
		assertThat(answer.headers().firstValue("Content-Type").orElse("")).startsWith("application/problem+json");
		assertThat(Caller.json(answer).get("status").asInt()).isEqualTo(status);
		assertThat(Caller.json(answer).get("detail").asString()).isNotBlank();
	}

	@Test
	void theProblemOfAnUnreadableBodyNamesTheField() {
		HttpResponse<String> answer = this.caller.api("POST", "/api/dogs", STAFF,
				"{'name':'Moss','timeZone':'Europe/London','planMinutes':'many'}");
		assertThat(Caller.json(answer).get("detail").asString()).contains("planMinutes");
	}

	@Test
	void withoutParametersAListIsWholeAndWithThemAPart() {
		enrol("Page one");
		enrol("Page two");
		JsonNode all = Caller.json(this.caller.api("GET", "/api/dogs", STAFF, ""));
		HttpResponse<String> second = this.caller.api("GET", "/api/dogs?page=1&size=1", STAFF, "");
		assertThat(all.size()).isGreaterThanOrEqualTo(2);
		assertThat(Caller.json(second)).hasSize(1);
		assertThat(Caller.json(second).get(0)).isEqualTo(all.get(1));
		assertThat(second.headers().firstValue("X-Total-Count")).contains(String.valueOf(all.size()));
	}

	@Test
	void aChangeOfAStaleCopyIsRefused() {
		String dog = "/api/dogs/" + enrol("Stale");
		String seen = this.caller.api("GET", dog, STAFF, "").headers().firstValue("ETag").orElseThrow();
		HttpResponse<String> first = this.caller.api("PATCH", dog, STAFF, "{'planMinutes':18}", "If-Match", seen);
		HttpResponse<String> second = this.caller.api("PATCH", dog, STAFF, "{'planMinutes':25}", "If-Match", seen);
		assertThat(first.statusCode()).isEqualTo(200);
		assertThat(first.headers().firstValue("ETag")).isPresent().isNotEqualTo(java.util.Optional.of(seen));
		assertThat(second.statusCode()).isEqualTo(412);
		assertThat(Caller.json(this.caller.api("GET", dog, STAFF, "")).get("planMinutes").asDouble()).isEqualTo(18);
	}

	@Test
	void withoutIfMatchAChangeIsTaken() {
		String dog = "/api/dogs/" + enrol("Free");
		assertThat(this.caller.api("PATCH", dog, STAFF, "{'planMinutes':18}").statusCode()).isEqualTo(200);
	}

	@Test
	void theDescriptionListsEveryDoorOfTheApiAndNoOther() {
		JsonNode paths = Caller.json(this.caller.api("GET", "/v3/api-docs", STAFF, "")).get("paths");
		assertThat(paths.propertyNames()).containsExactlyInAnyOrder("/api/dogs", "/api/dogs/{id}",
				"/api/dogs/{id}/journal", "/api/dogs/{id}/suggestion", "/api/dogs/{id}/export", "/api/alerts",
				"/api/alerts/{id}/acknowledge", "/api/alerts/{id}/close", "/api/alert-codes", "/api/backups");
		assertThat(paths.get("/api/dogs/{id}").propertyNames()).containsExactlyInAnyOrder("get", "patch", "delete");
	}

	@Test
	void theDescriptionSpellsWordsAsTheApiDoes() {
		JsonNode level = Caller.json(this.caller.api("GET", "/v3/api-docs", STAFF, ""))
			.at("/components/schemas/Alert/properties/level/enum");
		assertThat(level.valueStream().map(JsonNode::asString)).containsExactly("review", "same-day", "emergency");
	}

	@Test
	void theDescriptionNeedsALoginToo() {
		assertThat(this.caller.api("GET", "/v3/api-docs", "", "").statusCode()).isEqualTo(401);
	}

	@Test
	void anErasedDogIsGone() {
		String dog = "/api/dogs/" + enrol("Gone");
		assertThat(this.caller.api("DELETE", dog, STAFF, "").statusCode()).isEqualTo(204);
		assertThat(this.caller.api("GET", dog, STAFF, "").statusCode()).isEqualTo(404);
	}

}
