package measuredwalk.clinic.pages;

import java.net.http.HttpResponse;
import java.util.Map;

import measuredwalk.clinic.Caller;
import measuredwalk.clinic.RunningClinic;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.boot.test.web.server.LocalServerPort;
import tools.jackson.databind.JsonNode;

import static org.assertj.core.api.Assertions.assertThat;

@RunningClinic
class DiaryPageTests {

	private static final String STAFF = "clinic:rehearsal";

	private static final String DIARY = """
			date,time,about,minutes,said
			2026-03-01,08:00,walk,20,"fine, no limp"
			2026-03-02,,morning,,stiff for 10 minutes
			2026-03-02,,walk,,25 mins and slowed after 15
			2026-03-03,,walk,,lovely weather
			03/04/26,,walk,15,
			2099-01-01,,walk,15,
			""";

	@LocalServerPort
	private int port;

	private Caller caller;

	private String dog = "";

	@BeforeEach
	void enrol() {
		this.caller = new Caller(this.port);
		this.dog = Caller
			.json(this.caller.api("POST", "/api/dogs", STAFF,
					"{'name':'Sorrel','timeZone':'Europe/London','planMinutes':20}"))
			.get("id")
			.asString();
		this.caller.login("clinic", "rehearsal");
	}

	@Test
	void thePreviewShowsRowByRowWhatIsReadAndStoresNothing() {
		String page = preview(DIARY);
		assertThat(page).contains("3 of 6 rows would be stored", "Walk at 08:00: 20 min", "no lameness",
				"Morning: stiff for 10 min", "slowing, from minute 15", "No walk was found in it",
				"03/04/26&#39; is no date", "That day has not come yet");
		assertThat(journal().get("walks")).isEmpty();
	}

	@Test
	void whatIsStoredIsInTheJournalWithTheWordsOfTheDiary() {
		assertThat(Caller.location(store(DIARY))).isEqualTo("/clinic/dogs/" + this.dog);
		assertThat(journal().get("walks")).hasSize(2);
		assertThat(journal().get("mornings")).hasSize(1);
		assertThat(journal().get("walks").get(1).get("said").get(0).asString())
			.isEqualTo("25 mins and slowed after 15");
		assertThat(journal().get("walks").get(0).get("reportedBy").asString()).startsWith("paper diary");
	}

	@Test
	void whatMadeAWalkHarderIsReadFromADiaryToo() {
		String diary = "date,minutes,said\n2026-03-01,20,on the beach\n2026-03-02,,25 mins up the hill and no stairs\n";
		assertThat(preview(diary)).contains("20 min; harder: rough ground", "25 min; harder: hills");
		store(diary);
		assertThat(journal().get("walks").get(0).get("loads").toString()).isEqualTo("[\"rough-ground\"]");
		assertThat(journal().get("walks").get(1).get("loads").toString()).isEqualTo("[\"hills\"]");
	}

	@Test
	void theSameDiaryBroughtTwiceIsStoredOnce() {
		store(DIARY);
		assertThat(preview(DIARY)).contains("0 of 6 rows would be stored", "The journal has this already");
		store(DIARY);
		assertThat(journal().get("walks")).hasSize(2);
	}

	@Test
	void aDistanceOrAShareOfTheUsualIsTurnedIntoMinutesAsInTheChatAndStoredOnce() {
		String diary = """
				date,about,said
				2026-03-01,walk,20 mins
				2026-03-02,walk,half the usual
				2026-03-03,walk,we went 900 metres
				""";
		assertThat(preview(diary)).contains("3 of 3 rows would be stored");
		store(diary);
		assertThat(journal().get("walks")).extracting((walk) -> walk.get("minutes").asDouble())
			.containsExactly(20.0, 10.0, 20.0);
		assertThat(preview(diary)).contains("0 of 3 rows would be stored");
	}

	@Test
	void aDiaryThatIsNoTableIsRefusedAndKeptInTheForm() {
		assertThat(preview("dear diary, today we walked")).contains("must name the columns", "dear diary");
	}

	@Test
	void scriptInADiaryIsShownAsText() {
		assertThat(preview("date,minutes,said\n2026-03-01,20,<script>alert(1)</script>\n"))
			.doesNotContain("<script>alert");
	}

	private String preview(String text) {
		return this.caller
			.post("/clinic/dogs/" + this.dog + "/diary", "/clinic/dogs/" + this.dog + "/diary/preview",
					Map.of("text", text))
			.body();
	}

	private HttpResponse<String> store(String text) {
		return this.caller.post("/clinic/dogs/" + this.dog + "/diary", "/clinic/dogs/" + this.dog + "/diary",
				Map.of("text", text));
	}

	private JsonNode journal() {
		return Caller.json(this.caller.api("GET", "/api/dogs/" + this.dog + "/journal", STAFF, ""));
	}

}
