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
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * The whole loop over several rehearsed days, through the real HTTP chat, the same on
 * each database. Each test has a dog of its own: it is enrolled by the API and joined by
 * code.
 */
@SpringBootTest(webEnvironment = WebEnvironment.RANDOM_PORT, properties = "measuredwalk.rehearsal=true")
@DirtiesContext
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
abstract class LoopContract {

	private static final String TOLD = "we did 25 minutes round the field, she slowed up after about 15 and was a bit"
			+ " stiff on the back left";

	@LocalServerPort
	private int port;

	@Autowired
	private JsonMapper json;

	private ChatVisitor wren;

	private String dog = "";

	@BeforeEach
	void enrolOneDogMoreAndJoinIt() {
		this.wren = new ChatVisitor(this.port, "wren");
		String body = this.wren
			.send("POST", "/api/dogs",
					"{\"name\":\"Bramble\",\"timeZone\":\"Europe/London\",\"planMinutes\":20,\"walksPerDay\":2,"
							+ "\"minMinutes\":6,\"maxMinutes\":45}")
			.body();
		JsonNode enrolled = this.json.readTree(body);
		this.dog = enrolled.get("id").asString();
		this.wren.say("/start " + enrolled.get("joinCode").asString());
		this.wren.moveOn("evening");
	}

	private JsonNode walks() {
		return journal("").get("walks");
	}

	private JsonNode journal(String query) {
		return this.json.readTree(this.wren.get("/api/dogs/" + this.dog + "/journal" + query));
	}

	private JsonNode suggestion() {
		return this.json.readTree(this.wren.get("/api/dogs/" + this.dog + "/suggestion"));
	}

	@Test
	void joiningTellsThePlanAndWhatThisIsAndWhomToCall() {
		String chat = String.join("\n", this.wren.look());
		assertThat(chat).contains("Bramble's plan: 2 walks of 20 minutes each.")
			.contains("I am a support for your clinic")
			.contains("call your clinic on");
	}

	@Test
	void aWalkToldInPlainWordsIsWrittenDownThenOnlyWhatIsOpenIsAskedThenComesTheSuggestion() {
		List<String> answers = this.wren.say(TOLD);
		assertThat(answers).hasSize(4);
		assertThat(answers.get(0)).startsWith("Written down: 25 minutes today").contains("after 15 minutes", "stiff");
		assertThat(answers.get(1)).isEqualTo("And how is Bramble now, next to a usual day?");
		assertThat(answers.get(2)).contains("walk today");
		assertThat(answers.get(3)).startsWith("While walks are short");
		assertThat(this.wren.choices()).contains("Same as usual");
		assertThat(this.wren.say("/today")).noneMatch((line) -> line.startsWith("While walks are short"));
	}

	@Test
	void whatIsReadIsInTheJournalAtOnceWithTheOwnersOwnWords() {
		this.wren.say(TOLD);
		JsonNode walk = walks().get(0);
		assertThat(walk.get("minutes").asDouble()).isEqualTo(25);
		assertThat(walk.get("said").get(0).asString()).isEqualTo(TOLD);
		assertThat(walk.get("reportedBy").asString()).isEqualTo("Wren");
		assertThat(walk.get("signs").toString()).contains("\"sign\":\"slowing\"", "\"onsetMinute\":15.0",
				"\"sign\":\"stiffness\"", "\"side\":\"left\"", "\"limb\":\"hind\"");
	}

	@Test
	void laterAnswersOfTheSameCheckInAddToTheSameEntry() {
		this.wren.say("/walk");
		this.wren.say("20 minutes");
		this.wren.say("she limped a bit");
		List<String> end = this.wren.say("near the end");
		assertThat(walks()).hasSize(1);
		assertThat(walks().get(0).get("said")).hasSize(3);
		assertThat(end.get(0)).startsWith("All noted: 20 minutes today").contains("limped", "near the end");
	}

	@Test
	void aCheckInAsksAtMostThreeQuestions() {
		int questions = this.wren.say("/walk").size();
		questions += (int) this.wren.say("20 minutes").stream().filter((line) -> line.endsWith("?")).count();
		questions += (int) this.wren.say("she limped").stream().filter((line) -> line.endsWith("?")).count();
		List<String> end = this.wren.say("after 10 minutes");
		assertThat(questions).isEqualTo(3);
		assertThat(end).noneMatch((line) -> line.endsWith("?"));
	}

	@Test
	void theMorningCheckInComesByItselfAndTheSuggestionChangesWithTheAnswers() {
		this.wren.say(TOLD);
		this.wren.say("same as usual");
		double before = suggestion().get("minutes").asDouble();
		assertThat(this.wren.moveOn("morning"))
			.contains("Good morning. How did Bramble get up today, next to a usual day?");
		this.wren.say("much worse, very stiff and lame");
		this.wren.say("40 minutes");
		this.wren.say("no");
		JsonNode after = suggestion();
		assertThat(after.get("minutes").asDouble()).isLessThan(before);
		assertThat(journal("").get("mornings").get(0).get("stiffMinutes").asDouble()).isEqualTo(40);
	}

	@Test
	void threeDaysGoBy() {
		for (int day = 0; day < 3; day++) {
			this.wren.say("20 minutes, no trouble at all");
			assertThat(this.wren.moveOn("morning")).anyMatch((line) -> line.startsWith("Good morning."));
			this.wren.say("same as usual");
			this.wren.moveOn("evening");
		}
		assertThat(walks()).hasSize(3);
		assertThat(journal("").get("mornings")).hasSize(3);
		assertThat(suggestion().get("chanceOfTrouble").asDouble()).isBetween(0.0, 1.0);
	}

	@Test
	void aHouseholdOfAnotherLanguageIsAskedReadAndAnsweredInIt() {
		this.wren.send("PATCH", "/api/dogs/" + this.dog, "{\"language\":\"es\"}");
		List<String> answers = this.wren.say("25 minutos por el campo, cojeó un poco de la pata trasera izquierda");
		assertThat(answers.get(0)).isEqualTo("Apuntado: 25 minutos hoy; cojeó un poco, pata trasera izquierda.");
		assertThat(answers.get(1)).isEqualTo("¿A los cuántos minutos del paseo de Bramble empezó?");
		assertThat(this.wren.choices()).contains("A mitad de camino");
		assertThat(this.wren.say("a los 15").get(0)).startsWith("¿Y cómo está Bramble ahora");
		assertThat(this.wren.say("Como siempre").get(0)).contains("a los 15 minutos; como siempre.");
		assertThat(walks().get(0).get("signs").get(0).get("sign").asString()).isEqualTo("lameness");
		assertThat(this.wren.say("no se puede levantar").get(0)).startsWith("Llama ahora a la clínica")
			.contains("no pudo levantarse");
	}

	@Test
	void loadsPlansPicturesAndCopiesAreInTheHouseholdsLanguageToo() {
		this.wren.send("PATCH", "/api/dogs/" + this.dog, "{\"language\":\"es\"}");
		assertThat(this.wren.say("20 minutos cuesta arriba con la pelota, todo bien"))
			.anyMatch((line) -> line.contains("20 minutos con cuestas y con pelota o juego brusco hoy"));
		assertThat(this.wren.say("sin cuestas, todo llano"))
			.anyMatch((line) -> line.startsWith("Cambiado. Ahora dice: 20 minutos con pelota o juego brusco hoy"));
		assertThat(this.wren.say("/why")).anyMatch((line) -> line.contains("con pelota o juego brusco fue más duro"));
		assertThat(this.wren.say("/log")).anyMatch((line) -> line
			.matches("Dos semanas de Bramble: paseos en 1 de \\d+ días, con señales en ninguno de ellos\\..*"));
		assertThat(this.wren.say("/log en palabras")).anyMatch((line) -> line.contains("caminó 20 de"));
		assertThat(this.wren.say("no más fotos"))
			.containsExactly("Bien, no más fotos los domingos. Envía /log cuando quieras ver una.");
		assertThat(this.wren.say("/hours")).anyMatch((line) -> line.contains("Los domingos no envío ninguna foto."));
		assertThat(this.wren.say("/export").get(0)).startsWith("¿Cómo quieres el diario de Bramble?");
		assertThat(this.wren.choices()).contains("/export pdf", "/export csv", "/export texto");
		assertThat(this.wren.say("/export texto").get(0)).contains("20 minutos con pelota o juego brusco");
	}

	@Test
	void aLongerDayIsPlannedInTheHouseholdsLanguageToo() {
		this.wren.send("PATCH", "/api/dogs/" + this.dog, "{\"language\":\"es\"}");
		assertThat(this.wren.say("mañana vamos a dar un paseo más largo, de 40 minutos")).singleElement()
			.asString()
			.matches("Suena muy bien\\. Para el .* yo haría 4 paseos de 1\\d minutos cada uno, .*"
					+ " Con 40 minutos de una vez, el riesgo de que sea demasiado es de .* Lo decide esa mañana\\.");
		assertThat(walks()).isEmpty();
	}

	@Test
	void aHouseholdChoosesHowItIsSpokenTo() {
		assertThat(this.wren.say("/language").get(0)).startsWith("I speak English (British words)");
		assertThat(this.wren.choices()).contains("Español", "Miles", "Say vet");
		assertThat(this.wren.say("Miles").get(0)).contains("tell distances in miles");
		assertThat(this.wren.say("2 miles, no limp").get(0)).contains("2 miles today");
		assertThat(this.wren.say("/language español, km").get(0)).contains("Mi idioma: Español", "en kilómetros");
		assertThat(this.wren.say("/language klingon").get(0)).contains("Puedo hablar: English (British words)");
		assertThat(this.wren.say("/hours mañanas a las 8, domingos no").get(1)).contains("pregunto a las 08:00")
			.contains("No pregunto los domingos.");
		assertThat(this.wren.say("¿podemos hacer 60 minutos hoy?").get(0)).startsWith("60 minutos es más de lo que");
		assertThat(this.wren.say("/erase").get(0)).contains("escribe: borrar Bramble");
		assertThat(this.wren.say("No").get(0)).isEqualTo("Bien. No se borra nada.");
	}

	@Test
	void anEmergencyIsSeenInALanguageThatTheHouseholdDoesNotSpeak() {
		assertThat(this.wren.say("mi perra no se puede levantar, ayuda").get(0))
			.startsWith("Please call the clinic now");
	}

	@Test
	void aMorningThatWasToldAlreadyIsNotAskedAgain() {
		long before = morningsAsked();
		this.wren.moveOn("morning");
		this.wren.say("same as usual");
		this.wren.moveOn("evening");
		assertThat(morningsAsked() - before).isEqualTo(1);
	}

	/** Late in the day the way to the evening leads over a morning. */
	private long morningsAsked() {
		return this.wren.look().stream().filter((line) -> line.contains("How did Bramble get up")).count();
	}

	@Test
	void whatMadeAWalkHarderIsWrittenDownInPlainWordsAndTakenBackInPlainWords() {
		assertThat(this.wren.say("20 minutes up the hill, chased his ball, no trouble at all"))
			.anyMatch((line) -> line.contains("20 minutes on hills and with ball or rough play today"));
		assertThat(walks().get(0).get("loads").toString()).isEqualTo("[\"hills\",\"play\"]");
		assertThat(this.wren.say("no hills, it was all flat"))
			.anyMatch((line) -> line.startsWith("Changed. It now says: 20 minutes with ball or rough play today"));
		assertThat(journal("?history=true").get("walks")).hasSize(2);
		assertThat(this.wren.say("/why")).anyMatch((line) -> line.contains("with ball or rough play was harder"));
	}

	@Test
	void aCorrectionOfTheMinutesKeepsWhatMadeTheWalkHarder() {
		this.wren.say("50 minutes on the beach, no trouble at all");
		assertThat(this.wren.say("no, 15 not 50"))
			.anyMatch((line) -> line.contains("15 minutes on rough or soft ground"));
		assertThat(this.wren.say("/undo")).anyMatch((line) -> line.startsWith("Taken back: 15 minutes on rough"));
	}

	@Test
	void aCorrectionInPlainWordsChangesWhatItNamesAndKeepsHistory() {
		this.wren.say("25 minutes, limped on the front right");
		List<String> answer = this.wren.say("no, 15 not 25");
		assertThat(answer.get(0)).startsWith("Changed. It now says: 15 minutes today").contains("front right");
		assertThat(walks()).hasSize(1);
		assertThat(walks().get(0).get("minutes").asDouble()).isEqualTo(15);
		JsonNode history = journal("?history=true").get("walks");
		assertThat(history).hasSize(2);
		assertThat(history.toString()).contains("\"standing\":\"replaced\"", "\"standing\":\"counts\"");
	}

	@Test
	void undoTakesBackTheLastEntryAndKeepsHistory() {
		this.wren.say("20 minutes, fine");
		assertThat(this.wren.say("/undo").get(0)).startsWith("Taken back: 20 minutes today");
		assertThat(walks()).isEmpty();
		assertThat(journal("?history=true").get("walks").get(0).get("standing").asString()).isEqualTo("undone");
		assertThat(this.wren.say("/undo")).containsExactly("There is nothing of yours to take back.");
	}

	@Test
	void nonsenseGetsOneKindAskBackNotALoop() {
		assertThat(this.wren.say("blargh fnord wibble")).singleElement()
			.asString()
			.startsWith("Sorry, I did not follow that.");
		assertThat(this.wren.say("zzgrk qpfft"))
			.containsExactly("I still could not read that, so I have kept your words for the clinic.");
	}

	@Test
	void nonsenseInsideACheckInIsAskedOnceMoreThenTheCheckInGoesOn() {
		this.wren.say("/walk");
		assertThat(this.wren.say("blargh fnord"))
			.containsExactly("About how many minutes was Bramble out? A guess is fine.");
		List<String> second = this.wren.say("zzgrk qpfft");
		assertThat(second.get(0)).contains("kept your words for the clinic");
		assertThat(second.get(1)).startsWith("Did Bramble slow down");
	}

	@Test
	void aCommandInsideACheckInDoesNotLoseThePlace() {
		this.wren.say("/walk");
		this.wren.say("/today");
		this.wren.say("20 minutes");
		assertThat(walks().get(0).get("minutes").asDouble()).isEqualTo(20);
		assertThat(this.wren.say("no, nothing").get(0)).isEqualTo("And how is Bramble now, next to a usual day?");
	}

	@Test
	void anEmergencyIsAnsweredAtOnceWithTheNumberAndRaisesAnAlert() {
		this.wren.say("/walk");
		List<String> answer = this.wren.say("lovely sunny walk, she collapsed by the gate");
		assertThat(answer.get(0)).startsWith("Please call the clinic now: 01632 960 150.");
		assertThat(answer).noneMatch((line) -> line.endsWith("?"));
		String alerts = this.wren.get("/api/alerts?status=open");
		assertThat(alerts).contains(this.dog).contains("\"level\":\"emergency\"").contains("collapsed by the gate");
	}

	@Test
	void twoPeopleShareOneLog() {
		String share = this.wren.say("/share").get(0);
		ChatVisitor alder = new ChatVisitor(this.port, "alder");
		alder.say("/start " + share.replaceAll("(?s).*/start (\\w+).*", "$1"));
		alder.say("15 minutes, fine");
		assertThat(this.wren.say("/log").get(0)).contains("15 minutes today").contains("(Alder)");
		assertThat(this.wren.say("/undo")).containsExactly("There is nothing of yours to take back.");
	}

	@Test
	void stopEndsAllMessagesUntilStart() {
		assertThat(this.wren.say("/stop").get(0)).startsWith("I will send nothing more.");
		assertThat(this.wren.moveOn("morning")).isEmpty();
		assertThat(this.wren.say("/start").get(0)).startsWith("I am back.");
	}

	@Test
	void veryLongAndOddMessagesAreAnsweredKindlyAndShownEscaped() {
		assertThat(this.wren.say("<script>alert(1)</script> & <b>20 minutes</b>")).isNotEmpty();
		assertThat(this.wren.rawPage()).doesNotContain("<script>alert(1)").contains("&lt;script&gt;");
		assertThat(this.wren.say("woof ".repeat(4000))).isNotEmpty();
		assertThat(this.wren.say("\uD83D\uDC36\uD83D\uDC36")).isNotEmpty();
		assertThat(this.wren.say("a\u0000b\u0007c")).isNotEmpty().noneMatch((line) -> line.contains("went wrong"));
	}

	@Test
	void draggingToldForTheFirstTimeIsAskedAboutOnceAndReviewed() {
		List<String> answer = this.wren.say("20 minutes, dragged her back foot a bit near the end");
		assertThat(answer).filteredOn((line) -> line.endsWith("?"))
			.containsExactly("Is the dragging new today, and can Bramble stand and put that foot flat?");
		List<String> after = this.wren.say("It is not new");
		assertThat(after.get(after.size() - 1)).isEqualTo("And how is Bramble now, next to a usual day?");
		assertThat(this.wren.get("/api/alerts?status=open")).contains(this.dog).contains("\"level\":\"review\"");
		this.wren.say("same as usual");
		assertThat(this.wren.say("15 minutes, dragged her back foot"))
			.noneMatch((line) -> line.startsWith("Is the dragging new"));
	}

	@Test
	void newDraggingOfAFootThatWillNotGoFlatIsAnEmergency() {
		this.wren.say("20 minutes, dragged her back foot a bit");
		assertThat(this.wren.say("It is new and the foot will not go flat").get(0))
			.startsWith("Please call the clinic now");
	}

	@Test
	void aMedicineQuestionIsLeftToTheClinic() {
		assertThat(this.wren.say("can I give her another tablet?")).singleElement()
			.asString()
			.startsWith("That is one for your clinic to answer.");
	}

	@Test
	void onAnAntiInflammatoryOffFoodAndSickMeansCallTodayAndHoldTheMedicine() {
		this.wren.send("PATCH", "/api/dogs/" + this.dog, "{\"medications\":[\"nsaid\"]}");
		List<String> answer = this.wren.say("she is off her food and was sick this morning");
		assertThat(answer.get(0)).startsWith("Please call the clinic today: 01632 960 150.");
		assertThat(answer.get(1)).isEqualTo("Give no more of the pain medicine until the clinic has spoken to you.");
		assertThat(this.wren.get("/api/alerts?status=open")).contains(this.dog).contains("\"level\":\"same-day\"");
	}

	@Test
	void beginningWithoutAClinicAsksTheNameAndTheHabit() {
		ChatVisitor alder = new ChatVisitor(this.port, "newcomer");
		assertThat(alder.say("hello").get(0)).contains("/start");
		assertThat(alder.say("/start")).containsExactly("What is your dog called?");
		assertThat(alder.say("Sorrel").get(0)).startsWith("How many minutes does Sorrel walk");
		List<String> begun = alder.say("about 15 minutes");
		assertThat(begun.get(1)).contains("2 walks of 15 minutes");
		assertThat(alder.say("we did 15 minutes, all fine").get(0)).startsWith("Written down: 15 minutes today");
	}

	@Test
	void whoeverTriesCodesIsSlowedDown() {
		String good = this.wren.say("/share").get(0).replaceAll("(?s).*/start (\\w+).*", "$1");
		ChatVisitor guesser = new ChatVisitor(this.port, "newcomer");
		for (int guess = 0; guess < 5; guess++) {
			assertThat(guesser.say("/start GUESS" + guess).get(0)).startsWith("I do not know that code.");
		}
		assertThat(guesser.say("/start " + good).get(0)).startsWith("Those were a lot of codes");
		this.wren.send("POST", "/rehearsal/clock", laterByTwoHours());
		assertThat(guesser.say("/start " + good).get(0)).startsWith("Hello. I help you keep Bramble's walks right");
		guesser.say("/leave");
	}

	@Test
	void exportGivesTheRecordWithTheOwnersOwnWords() {
		this.wren.say("20 minutes, no trouble at all");
		assertThat(this.wren.say("/export")).containsExactly("How would you like Bramble's record?"
				+ " As a PDF to read or print, as a table (CSV) for a spreadsheet, or as text here?");
		assertThat(this.wren.choices()).contains("/export pdf", "/export csv", "/export text");
		assertThat(this.wren.say("/export text")).singleElement()
			.asString()
			.startsWith("Bramble's record.")
			.contains("Bramble's plan: 2 walks of 20 minutes each.", "20 minutes",
					"Wren: '20 minutes, no trouble at all'");
	}

	@Test
	void eraseNeedsTheNameTypedRightAfterTheQuestion() {
		assertThat(this.wren.say("erase Bramble")).noneMatch((line) -> line.contains("is erased"));
		this.wren.say("/erase");
		assertThat(this.wren.say("no")).containsExactly("Good. Nothing is erased.");
		assertThat(this.wren.send("GET", "/api/dogs/" + this.dog, "").statusCode()).isEqualTo(200);
		this.wren.say("/erase");
		this.wren.say("/today");
		assertThat(this.wren.say("erase Bramble")).noneMatch((line) -> line.contains("is erased"));
		assertThat(this.wren.send("GET", "/api/dogs/" + this.dog, "").statusCode()).isEqualTo(200);
	}

	@Test
	void erasingTakesTheDogAwayForEveryoneAndThenTheChatsOfThoseWithoutADog() {
		String share = this.wren.say("/share").get(0);
		ChatVisitor alder = new ChatVisitor(this.port, "alder");
		alder.say("/start " + share.replaceAll("(?s).*/start (\\w+).*", "$1"));
		this.wren.say("/erase");
		assertThat(this.wren.say("erase bramble"))
			.containsExactly("All that I held of Bramble is erased. I wish you both well.");
		assertThat(alder.look()).anyMatch((line) -> line.startsWith("Wren has erased Bramble's log"));
		assertThat(this.wren.send("GET", "/api/dogs/" + this.dog, "").statusCode()).isEqualTo(404);
		this.wren.send("POST", "/rehearsal/clock", laterByTwoHours());
		assertThat(this.wren.look()).isEmpty();
		assertThat(alder.look()).isEmpty();
	}

	private ChatVisitor alderWhoJoined() {
		String share = this.wren.say("/share").get(0);
		ChatVisitor alder = new ChatVisitor(this.port, "alder");
		alder.say("/start " + share.replaceAll("(?s).*/start (\\w+).*", "$1"));
		return alder;
	}

	@Test
	void aWalkThatTwoTellAlikeIsOneWalkWithTheWordsOfBoth() {
		ChatVisitor alder = alderWhoJoined();
		alder.say("20 minutes, fine");
		assertThat(this.wren.say("we did 22 minutes, she limped a bit near the end"))
			.contains("Then I keep it as one walk, with what Alder told me.");
		assertThat(walks()).hasSize(1);
		assertThat(walks().get(0).get("minutes").asDouble()).isEqualTo(20);
		assertThat(walks().get(0).get("said")).hasSize(2);
		assertThat(walks().get(0).get("signs").toString()).contains("lameness");
	}

	@Test
	void aWalkThatMayBeTheOthersIsAskedAboutAndJoinedOnYes() {
		ChatVisitor alder = alderWhoJoined();
		alder.say("20 minutes, fine");
		List<String> answers = this.wren.say("we did 35 minutes");
		assertThat(answers.get(answers.size() - 1)).isEqualTo("Is that the walk that Alder told me of, 20 minutes?");
		assertThat(answers).filteredOn((line) -> line.endsWith("?")).hasSize(1);
		assertThat(this.wren.say("Yes, the same").get(0)).startsWith("Then I keep it as one walk");
		assertThat(walks()).hasSize(1);
		assertThat(walks().get(0).get("minutes").asDouble()).isEqualTo(20);
	}

	@Test
	void aWalkThatIsAnotherStaysAWalkOfItsOwn() {
		ChatVisitor alder = alderWhoJoined();
		alder.say("20 minutes, fine");
		this.wren.say("we did 35 minutes");
		assertThat(this.wren.say("No, another walk").get(0)).isEqualTo("Then I keep it as a walk of its own.");
		assertThat(walks()).hasSize(2);
	}

	@Test
	void aMorningThatOneToldIsClosedForTheOther() {
		ChatVisitor alder = alderWhoJoined();
		this.wren.moveOn("morning");
		alder.say("same as usual this morning");
		List<String> chat = this.wren.look();
		assertThat(chat.get(chat.size() - 1)).isEqualTo("Alder has already told me about this morning.");
	}

	@Test
	void whoLeavesSharesNothingAnyMoreAndTheLastOneSaysWhatBecomesOfTheLog() {
		ChatVisitor alder = alderWhoJoined();
		assertThat(alder.say("/leave").get(0)).startsWith("You do not share Bramble's log any more.");
		assertThat(alder.say("20 minutes, fine").get(0)).contains("/start");
		assertThat(this.wren.say("/leave").get(0)).startsWith("You are the last one here for Bramble.");
		assertThat(this.wren.say("Keep it for the clinic").get(0)).startsWith("You do not share Bramble's log");
		assertThat(this.wren.send("GET", "/api/dogs/" + this.dog, "").statusCode()).isEqualTo(200);
		assertThat(this.wren.say("hello").get(0)).contains("/start");
	}

	@Test
	void theLastOneWhoLeavesMayEraseTheLog() {
		this.wren.say("/leave");
		assertThat(this.wren.say("erase Bramble").get(0)).startsWith("All that I held of Bramble is erased.");
		assertThat(this.wren.send("GET", "/api/dogs/" + this.dog, "").statusCode()).isEqualTo(404);
	}

	private String laterByTwoHours() {
		String now = this.json.readTree(this.wren.get("/rehearsal/clock")).get("now").asString();
		return "{\"now\":\"" + java.time.Instant.parse(now).plusSeconds(7200) + "\"}";
	}

	@Test
	void sameAsUsualInsideACheckInIsNoOtherWalk() {
		this.wren.say("25 minutes, she limped");
		this.wren.say("same as usual");
		assertThat(walks()).hasSize(1);
	}

	@Test
	void whetherALongerWalkMayBeIsAnsweredWithItsChance() {
		this.wren.say("20 minutes, slowed near the end");
		this.wren.say("same as usual");
		assertThat(this.wren.say("could we do 40 minutes tomorrow?").get(0))
			.startsWith("40 minutes is more than I would suggest today: the chance of it being too much is");
		assertThat(walks()).hasSize(1);
	}

	@Test
	void aLongerDayThatIsPlannedIsSpreadOverMoreWalksAndTheDaysAround() {
		double before = suggestion().get("minutes").asDouble();
		assertThat(this.wren.say("big walk planned tomorrow, about 40 min")).singleElement()
			.asString()
			.matches("That sounds lovely\\. For .* I would plan 4 walks of 1\\d minutes each, .*"
					+ " Keep the days just before and after to 2 walks of 1\\d minutes each\\."
					+ " The chance of 40 minutes at once being too much is .* That morning decides\\.");
		assertThat(walks()).isEmpty();
		assertThat(suggestion().get("minutes").asDouble()).isEqualTo(before);
	}

	@Test
	void whatElseAMessageWithAPlanTellsIsWrittenDown() {
		assertThat(this.wren.say("20 minutes today, no trouble at all. Visitors tomorrow, so we will walk longer."))
			.anyMatch((line) -> line.startsWith("That sounds lovely."))
			.anyMatch((line) -> line.startsWith("Written down: 20 minutes today"));
		assertThat(walks()).hasSize(1);
	}

	@Test
	void noLongerDayIsPlannedForADogThatShouldBeSeen() {
		this.wren.say("he has not eaten for a whole day and is very dull");
		List<String> said = this.wren.say("we have visitors tomorrow and will walk longer");
		assertThat(said).anyMatch((line) -> line.startsWith("I would not plan a longer day for Bramble just now."))
			.noneMatch((line) -> line.startsWith("That sounds lovely."));
	}

	@Test
	void whyNamesTheReasonsAndWhatTheJournalShows() {
		this.wren.say("20 minutes, slowed after 12 minutes");
		List<String> why = this.wren.say("/why");
		assertThat(String.join("\n", why)).contains("In the last 14 days Bramble showed signs on 1 of 1 walk");
	}

}
