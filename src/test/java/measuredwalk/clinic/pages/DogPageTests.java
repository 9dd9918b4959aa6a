package measuredwalk.clinic.pages;

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
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

import static org.assertj.core.api.Assertions.assertThat;

@RunningClinic
class DogPageTests {

	@LocalServerPort
	private int port;

	@Autowired
	private KnownPatient patient;

	@Autowired
	private Alerts alerts;

	private Caller caller;

	@BeforeEach
	void login() {
		this.caller = new Caller(this.port);
		this.caller.login("clinic", "rehearsal");
	}

	private String page(Dog dog) {
		return this.caller.get("/clinic/dogs/" + dog.id()).body();
	}

	@Test
	void theCourseStandsInThePageAsAPictureForEachWidthAndInWords() {
		String page = page(this.patient.knownFor(21));
		assertThat(page).contains("viewBox=\"0 0 760", "viewBox=\"0 0 356", "role=\"img\"")
			.containsPattern("aria-label=\"Sorrel, [^\"]+: 36 walks told of, 4 with signs; 4 of 18 mornings")
			.doesNotContain(" style=");
	}

	@Test
	void whatMadeAWalkHarderStandsInTheTableInTheJournalAndInTheApi() {
		Dog dog = this.patient.knownFor(21);
		assertThat(page(dog)).contains("16 (hills, play)", "Walk at 08:30: 16 min; harder: hills, play; slowing");
		assertThat(this.caller.api("GET", "/api/dogs/" + dog.id() + "/export", "clinic:rehearsal", "").body())
			.contains("\"loads\":[\"hills\",\"play\"]", "\"loads\":[]");
	}

	@Test
	void theRecordNamesTheDogThatWasSeen() {
		Dog dog = this.patient.knownFor(3);
		page(dog);
		assertThat(this.caller.get("/clinic/record").body())
			.contains("/clinic/record?about=" + dog.id() + "\">" + dog.name() + "</a>");
	}

	@Test
	void theCalibrationIsShownFromThirtyWalksOn() {
		assertThat(page(this.patient.knownFor(14))).contains("Shown from 30 walks told of; there are 24.")
			.doesNotContain("Signs expected");
		assertThat(page(this.patient.knownFor(21))).contains("Signs expected")
			.containsPattern("<th scope=\"row\">\\d+ %</th><td>\\d+</td><td>[\\d.]+</td><td>\\d+</td>");
	}

	@Test
	void weeklyAnswersStandInTheJournalOfThePageOfTheApiAndOfTheExport() {
		Dog dog = this.patient.knownFor(3);
		assertThat(page(dog)).contains("Weekly answer: weight", "she was 29.6 on the scales");
		for (String place : new String[] { "/journal", "/export" }) {
			HttpResponse<String> answer = this.caller.api("GET", "/api/dogs/" + dog.id() + place, "clinic:rehearsal",
					"");
			assertThat(Caller.json(answer).findValue("notes").toString()).as(place)
				.contains("\"topic\":\"weight\"", "she was 29.6 on the scales");
		}
	}

	@Test
	void anAlertHasAPageWithTheTrendAsPictureAndInWords() {
		Dog dog = this.patient.knownFor(28);
		Alert alert = this.alerts.raise(dog.id(), AlertLevel.REVIEW, "Signs piling up",
				new Evidence("very stiff today", dog.enrolledAt(), "Wren"));
		assertThat(this.caller.get("/clinic").body()).contains("/clinic/alerts/" + alert.id() + "/trend.svg");
		assertThat(this.caller.get("/clinic/alerts/" + alert.id()).body()).contains("very stiff today", "role=\"img\"",
				"mean sign grade", ": sign grade 2, 32 minutes", "name=\"act\" value=\"close\"");
		HttpResponse<String> picture = this.caller.get("/clinic/alerts/" + alert.id() + "/trend.svg");
		assertThat(picture.headers().firstValue("Content-Type").orElse("")).startsWith("image/svg+xml");
		assertThat(picture.body()).contains("mean sign grade");
	}

	@Test
	void aClosedAlertSaysWhoClosedItAndWhatWasDone() {
		Dog dog = this.patient.knownFor(3);
		Alert alert = this.alerts.raise(dog.id(), AlertLevel.REVIEW, "Signs piling up",
				new Evidence("very stiff today", dog.enrolledAt(), "Wren"));
		this.caller.post("/clinic/alerts/" + alert.id(), "/clinic/alerts/" + alert.id(),
				java.util.Map.of("act", "close", "note", "seen at the clinic"));
		assertThat(this.caller.get("/clinic/alerts/" + alert.id()).body())
			.contains("closed by clinic", "seen at the clinic")
			.doesNotContain("value=\"close\"");
	}

}
