package measuredwalk.clinic.pages;

import java.net.http.HttpResponse;
import java.util.Map;

import measuredwalk.clinic.Caller;
import measuredwalk.clinic.KnownPatient;
import measuredwalk.clinic.RunningClinic;
import measuredwalk.household.Dog;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.jdbc.core.simple.JdbcClient;

import static org.assertj.core.api.Assertions.assertThat;

@RunningClinic
class PageProblemsTests {

	@LocalServerPort
	private int port;

	@Autowired
	private KnownPatient patient;

	@Autowired
	private JdbcClient database;

	private Caller caller;

	@BeforeEach
	void login() {
		this.caller = new Caller(this.port);
		this.caller.login("clinic", "rehearsal");
	}

	private static void isAPage(HttpResponse<String> answer, int status, String words) {
		assertThat(answer.statusCode()).isEqualTo(status);
		assertThat(answer.headers().firstValue("Content-Type").orElse("")).startsWith("text/html");
		assertThat(answer.body()).contains("<!DOCTYPE html>", words);
	}

	@ParameterizedTest
	@CsvSource({ "/clinic/dogs,weightKg,heavy", "/clinic/dogs,surgeryDate,yesterday", "/clinic/dogs,walksPerDay,two",
			"/clinic/settings,setting,COLOUR" })
	void aFieldThatCannotBeReadIsNamedOnAPage(String path, String field, String text) {
		isAPage(this.caller.post("/clinic/dogs/new", path, Map.of(field, text, "name", "Moss", "planMinutes", "20")),
				400, "this cannot be read: " + field);
	}

	@Test
	void aPlanWithAnUnreadableFigureChangesNothing() {
		Dog dog = this.patient.knownFor(0);
		isAPage(this.caller.post("/clinic/dogs/" + dog.id(), "/clinic/dogs/" + dog.id() + "/plan", Map.of("planMinutes",
				"abc", "walksPerDay", "2", "minMinutes", "5", "maxMinutes", "30", "medications", "", "mark", "x")), 400,
				"this cannot be read: planMinutes");
	}

	@Test
	void aMissingFieldIsNamedOnAPage() {
		Dog dog = this.patient.knownFor(0);
		isAPage(this.caller.post("/clinic/dogs/" + dog.id(), "/clinic/dogs/" + dog.id() + "/erase", Map.of()), 400,
				"this cannot be read: sure");
	}

	@Test
	void aWrongAddressIsAPageToo() {
		isAPage(this.caller.get("/clinic/dogs/17", "Accept", "text/html"), 404, "There is no such page");
		isAPage(this.caller.get("/clinic/cats", "Accept", "text/html"), 404, "There is no such page");
	}

	@Test
	void whatDidNotGetThroughStandsOnTodaysPageWithoutAnybodysWords() {
		this.database
			.sql("insert into chat (channel, address, created_at) values ('telegram', '77', current_timestamp)")
			.update();
		this.database
			.sql("""
					insert into outbox_message (chat_id, unique_key, text, choices, written_at, state, attempts, failure)
					select max(id), 'dead-1', 'her own words', '[]', current_timestamp, 'dead', 12, 'Forbidden: blocked' from chat""")
			.update();
		this.database.sql("""
				insert into dead_update (channel, update_key, raw, failure, received_at)
				values ('telegram', '9', 'raw words', 'no message in it', current_timestamp)""").update();
		this.database
			.sql("""
					insert into inbox_message (channel, update_key, chat_id, sender_name, text, received_at, state, attempts, failure)
					select 'telegram', '10', max(id), 'Wren', 'said words', current_timestamp, 'failed', 5, 'broke' from chat""")
			.update();
		assertThat(this.caller.get("/clinic").body())
			.contains("Messages that did not get through", "could not be sent", "Forbidden: blocked",
					"Something came in by telegram that could not be read", "no message in it", "could not be handled")
			.doesNotContain("her own words", "raw words", "said words");
	}

}
