package measuredwalk.clinic.api;

import java.net.http.HttpResponse;

import measuredwalk.clinic.Caller;
import measuredwalk.clinic.KnownPatient;
import measuredwalk.clinic.RunningClinic;
import measuredwalk.escalation.Alert;
import measuredwalk.escalation.AlertLevel;
import measuredwalk.escalation.Alerts;
import measuredwalk.escalation.Evidence;
import measuredwalk.household.Dog;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

import static org.assertj.core.api.Assertions.assertThat;

/** The API against the document in which it describes itself. */
@RunningClinic
class ApiDescriptionTests {

	private static final String STAFF = "clinic:rehearsal";

	@LocalServerPort
	private int port;

	@Autowired
	private KnownPatient patient;

	@Autowired
	private Alerts alerts;

	private Caller caller;

	private ApiSchema schema;

	@BeforeEach
	void read() {
		this.caller = new Caller(this.port);
		this.schema = new ApiSchema(Caller.json(this.caller.api("GET", "/v3/api-docs", STAFF, "")));
	}

	/** All paths and methods that the outside contract names. */
	@ParameterizedTest
	@CsvSource({ "POST,/api/dogs", "GET,/api/dogs", "GET,/api/dogs/{id}", "PATCH,/api/dogs/{id}",
			"DELETE,/api/dogs/{id}", "GET,/api/dogs/{id}/journal", "GET,/api/dogs/{id}/suggestion",
			"GET,/api/dogs/{id}/export", "GET,/api/alerts", "POST,/api/alerts/{id}/acknowledge",
			"POST,/api/alerts/{id}/close", "POST,/api/alert-codes" })
	void everyOperationOfTheContractIsDescribed(String method, String path) {
		assertThat(this.schema.operation(method, path).isMissingNode()).isFalse();
		assertThat(this.schema.operation(method, path).path("responses").path("default").isMissingNode()).isFalse();
	}

	@Test
	void answersAreAsDescribed() {
		Dog dog = this.patient.knownFor(10);
		Alert alert = this.alerts.raise(dog.id(), AlertLevel.REVIEW, "Signs piling up",
				new Evidence("very stiff today", dog.enrolledAt(), "Wren"));
		isAsDescribed("POST", "/api/dogs", null, "{'name':'Moss','timeZone':'Europe/London','planMinutes':20}", 201);
		isAsDescribed("GET", "/api/dogs", null, "", 200);
		isAsDescribed("GET", "/api/dogs/{id}", dog.id(), "", 200);
		isAsDescribed("PATCH", "/api/dogs/{id}", dog.id(), "{'planMinutes':18,'medications':['nsaid','anti-ngf']}",
				200);
		for (String part : new String[] { "journal", "suggestion", "export" }) {
			isAsDescribed("GET", "/api/dogs/{id}/" + part, dog.id(), "", 200);
		}
		isAsDescribed("GET", "/api/alerts", null, "", 200);
		isAsDescribed("POST", "/api/alerts/{id}/acknowledge", alert.id(), "{'note':'in a week'}", 200);
		isAsDescribed("POST", "/api/alerts/{id}/close", alert.id(), "{'note':'done'}", 200);
		isAsDescribed("POST", "/api/alert-codes", null, "", 201);
		isAsDescribed("GET", "/api/dogs/{id}", java.util.UUID.randomUUID(), "", 404);
	}

	private void isAsDescribed(String method, String path, Object id, String body, int status) {
		HttpResponse<String> answer = this.caller.api(method, (id != null) ? path.replace("{id}", id.toString()) : path,
				STAFF, body);
		assertThat(answer.statusCode()).as(method + " " + path).isEqualTo(status);
		assertThat(this.schema.problems(method, path, status, Caller.json(answer))).as(method + " " + path).isEmpty();
	}

}
