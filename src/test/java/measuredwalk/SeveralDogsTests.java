package measuredwalk;

import java.util.List;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.context.SpringBootTest.WebEnvironment;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.annotation.DirtiesContext;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * Two dogs in one household, through the real HTTP chat. Each test has a household of its
 * own with the dogs Moss and Tarn.
 */
@SpringBootTest(webEnvironment = WebEnvironment.RANDOM_PORT, properties = "measuredwalk.rehearsal=true")
@DirtiesContext
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SeveralDogsTests {

	@LocalServerPort
	private int port;

	@Autowired
	private JsonMapper json;

	private ChatVisitor wren;

	private String moss = "";

	private String tarn = "";

	@DynamicPropertySource
	static void database(DynamicPropertyRegistry registry) {
		Databases.h2(registry);
	}

	@BeforeEach
	void joinAHouseholdOfTwoDogs() {
		this.wren = new ChatVisitor(this.port, "wren");
		JsonNode first = enrol("Moss", "");
		this.moss = first.get("id").asString();
		this.tarn = enrol("Tarn", ",\"householdId\":\"" + first.get("householdId").asString() + "\"").get("id")
			.asString();
		this.wren.say("/start " + first.get("joinCode").asString());
		this.wren.moveOn("evening");
	}

	private JsonNode enrol(String name, String more) {
		return this.json
			.readTree(
					this.wren
						.send("POST", "/api/dogs",
								"{\"name\":\"" + name + "\",\"timeZone\":\"Europe/London\",\"planMinutes\":20" + more
										+ "}")
						.body());
	}

	private JsonNode walks(String dog) {
		return journal(dog).get("walks");
	}

	private JsonNode journal(String dog) {
		return this.json.readTree(this.wren.get("/api/dogs/" + dog + "/journal"));
	}

	private String openAlerts() {
		return this.wren.get("/api/alerts?status=open");
	}

	@Test
	void joiningTellsThePlanOfEach() {
		assertThat(String.join("\n", this.wren.look())).contains("Moss's plan: 2 walks of 20 minutes each.",
				"Tarn's plan: 2 walks of 20 minutes each.", "You share Moss and Tarn's log now.");
	}

	@Test
	void oneMessageIsWrittenDownForEachDogThatItTellsOf() {
		List<String> answers = this.wren.say("both did 20, Tarn was a bit stiff");
		assertThat(answers).anyMatch((line) -> line.startsWith("Written down: Moss: 20 minutes today; nothing"))
			.anyMatch((line) -> line.startsWith("Written down: Tarn: 20 minutes today; a bit stiff"));
		assertThat(answers).filteredOn((line) -> line.endsWith("?"))
			.hasSize(1)
			.allMatch((line) -> line.contains("Tarn"));
		assertThat(walks(this.moss).get(0).get("signs")).isEmpty();
		assertThat(walks(this.tarn).get(0).get("signs").toString()).contains("stiffness");
		assertThat(walks(this.moss).get(0).get("said").get(0).asString())
			.isEqualTo("both did 20, Tarn was a bit stiff");
	}

	@Test
	void aSpanishMessageIsPartedByDogToo() {
		this.wren.say("/language español");
		List<String> answers = this.wren.say("Los dos 20 minutos, Tarn con un poco de rigidez");
		assertThat(answers).anySatisfy((answer) -> assertThat(answer).startsWith("Apuntado: Moss: 20 minutos"));
		assertThat(answers).anySatisfy(
				(answer) -> assertThat(answer).startsWith("Apuntado: Tarn: 20 minutos").contains("rigidez leve"));
		assertThat(walks(this.moss).get(0).get("signs")).isEmpty();
	}

	@Test
	void eachDogHasItsOwnMinutes() {
		this.wren.say("Tarn did 25 and Moss only 10");
		assertThat(walks(this.tarn).get(0).get("minutes").asDouble()).isEqualTo(25);
		assertThat(walks(this.moss).get(0).get("minutes").asDouble()).isEqualTo(10);
	}

	@Test
	void withoutANameItIsAskedOnceAndNothingIsGuessed() {
		List<String> asked = this.wren.say("20 minutes, limped a bit");
		assertThat(asked).containsExactly("Which dog do you mean: Moss or Tarn?");
		assertThat(this.wren.choices()).containsExactly("Moss", "Tarn", "Both of them");
		assertThat(walks(this.moss)).isEmpty();
		assertThat(walks(this.tarn)).isEmpty();
		assertThat(this.wren.say("Tarn").get(0)).startsWith("Written down: Tarn: 20 minutes today; limped a bit");
		assertThat(walks(this.moss)).isEmpty();
		assertThat(this.wren.say("Tarn")).noneMatch((line) -> line.startsWith("Written down"));
		assertThat(walks(this.tarn)).hasSize(1);
	}

	@Test
	void twoMessagesThatWaitAreTakenTogetherAndForBoth() {
		this.wren.say("20 minutes this evening");
		this.wren.say("limped a bit at the end");
		this.wren.say("Both of them");
		assertThat(walks(this.moss)).hasSize(1);
		assertThat(walks(this.tarn)).hasSize(1);
		assertThat(walks(this.tarn).get(0).get("signs").toString()).contains("lameness");
	}

	@Test
	void whatAnswersAQuestionIsOfTheDogThatWasAskedAbout() {
		this.wren.say("/walk Moss");
		this.wren.say("15 minutes");
		assertThat(walks(this.moss)).hasSize(1);
		List<String> answers = this.wren.say("Tarn did 10 as well");
		assertThat(answers.get(0)).startsWith("Written down: Tarn: 10 minutes today");
		assertThat(answers.get(answers.size() - 1)).startsWith("Did Moss slow down");
		this.wren.say("no, nothing");
		assertThat(walks(this.moss)).hasSize(1);
	}

	@Test
	void theMorningIsAskedOfOneAndMayBeAnsweredForBoth() {
		assertThat(this.wren.moveOn("morning")).filteredOn((line) -> line.startsWith("Good morning."))
			.singleElement()
			.asString()
			.contains("Moss");
		this.wren.say("both same as usual");
		assertThat(journal(this.moss).get("mornings")).hasSize(1);
		assertThat(journal(this.tarn).get("mornings")).hasSize(1);
		this.wren.moveOn("evening");
		assertThat(this.wren.look()).noneMatch((line) -> line.startsWith("Good morning. How did Tarn"));
	}

	@Test
	void anEmergencyWithoutANameIsAnsweredAtOnceAndWhichDogIsAskedAfterwards() {
		List<String> answers = this.wren.say("she collapsed by the gate");
		assertThat(answers.get(0)).startsWith("Please call the clinic now: 01632 960 150.");
		assertThat(answers.get(answers.size() - 1)).isEqualTo("Which dog do you mean: Moss or Tarn?");
		assertThat(openAlerts()).contains("Moss or Tarn, it is not told yet which");
		this.wren.say("Tarn");
		assertThat(openAlerts()).contains(this.tarn);
	}

	@Test
	void anEmergencyOfOneIsNotRaisedForTheOther() {
		assertThat(this.wren.say("Moss did 20, Tarn collapsed").get(0)).startsWith("Please call the clinic now");
		assertThat(openAlerts()).contains(this.tarn).doesNotContain(this.moss);
		assertThat(walks(this.moss).get(0).get("minutes").asDouble()).isEqualTo(20);
	}

	@Test
	void aCorrectionWithoutANamePutsRightWhatWasToldOfBoth() {
		this.wren.say("both did 50");
		this.wren.say("no, 15 not 50");
		assertThat(walks(this.moss).get(0).get("minutes").asDouble()).isEqualTo(15);
		assertThat(walks(this.tarn).get(0).get("minutes").asDouble()).isEqualTo(15);
	}

	@Test
	void whatIsShownIsShownOfEachByName() {
		this.wren.say("Tarn did 20");
		assertThat(this.wren.say("/today")).anyMatch((line) -> line.startsWith("Moss: Today"))
			.anyMatch((line) -> line.startsWith("Tarn: "));
		assertThat(this.wren.say("/today Tarn")).noneMatch((line) -> line.contains("Moss"));
		assertThat(this.wren.say("/log").toString()).contains("Nothing is written down for Moss yet",
				"Tarn's last days:");
		assertThat(this.wren.say("/log Tarn in words")).singleElement().asString().startsWith("Tarn: ");
		assertThat(this.wren.say("/export Moss")).singleElement().asString().contains("Moss's record");
		assertThat(this.wren.choices()).contains("/export Moss pdf");
		assertThat(this.wren.say("/export Moss csv")).singleElement().asString().contains("all of Moss's record");
		assertThat(this.wren.say("/why Moss").get(0)).startsWith("Moss: ");
		assertThat(this.wren.say("/undo").get(0)).startsWith("Taken back: Tarn: 20 minutes");
		assertThat(this.wren.say("/hours").get(0)).contains("Moss", "Tarn");
	}

	@Test
	void aCommandOfOneDogAsksWhich() {
		assertThat(this.wren.say("/walk")).containsExactly("Which dog do you mean: Moss or Tarn?");
		assertThat(this.wren.say("Tarn")).containsExactly("How long was Tarn's walk?");
	}

	@Test
	void oneOfTwoDogsIsErasedByItsName() {
		this.wren.say("/erase");
		assertThat(this.wren.say("Tarn").get(0)).contains("erase Tarn");
		assertThat(this.wren.say("erase Tarn").get(0)).startsWith("All that I held of Tarn is erased.");
		assertThat(this.wren.send("GET", "/api/dogs/" + this.moss, "").statusCode()).isEqualTo(200);
		assertThat(this.wren.say("20 minutes").get(0)).startsWith("Written down: 20 minutes today");
	}

	@Test
	void courtesiesNeedNoDog() {
		assertThat(this.wren.say("thank you")).containsExactly("You are welcome.");
	}

	@Test
	void aSecondCodeAsksWhetherTheEarlierDogsStay() {
		String code = enrol("Fern", "").get("joinCode").asString();
		List<String> joined = this.wren.say("/start " + code);
		assertThat(joined.get(joined.size() - 1))
			.isEqualTo("You shared Moss and Tarn's log until now. Shall I go on with Moss and Tarn here as well?");
		assertThat(this.wren.say("Keep both").get(0)).startsWith("Good. We talk about Moss, Tarn and Fern here");
		this.wren.say("Moss did 10, Fern 12");
		assertThat(walks(this.moss)).hasSize(1);
		assertThat(this.wren.say("/share")).containsExactly("Which dog do you mean: Fern, Moss or Tarn?");
		assertThat(this.wren.say("Fern").get(0)).startsWith("To share Fern's log");
	}

	@Test
	void withoutAnAnswerASecondCodeLeavesTheEarlierDogs() {
		this.wren.say("/start " + enrol("Fern", "").get("joinCode").asString());
		assertThat(this.wren.say("20 minutes, fine").get(0)).startsWith("Written down: 20 minutes today");
		assertThat(walks(this.moss)).isEmpty();
	}

	@Test
	void aDogOfAHouseholdThatIsNotThereIsRefused() {
		assertThat(this.wren
			.send("POST", "/api/dogs",
					"{\"name\":\"Fern\",\"planMinutes\":20,\"householdId\":\"00000000-0000-0000-0000-000000000000\"}")
			.statusCode()).isEqualTo(400);
	}

}
