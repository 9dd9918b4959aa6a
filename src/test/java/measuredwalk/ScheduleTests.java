package measuredwalk;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.temporal.TemporalAdjusters;
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
 * What comes by itself, over rehearsed days. Each test begins on a Tuesday at noon with a
 * dog of its own that walks at 08:00 and 17:30.
 */
@SpringBootTest(webEnvironment = WebEnvironment.RANDOM_PORT, properties = "measuredwalk.rehearsal=true")
@DirtiesContext
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ScheduleTests {

	private static final ZoneId ZONE = ZoneId.of("Europe/London");

	private static final String MORNING = "Good morning. How did Tarn get up today, next to a usual day?";

	private static final String WALK = "How long was Tarn's walk?";

	private static final String MORNING_REMINDER = "When you have a moment, how was Tarn this morning?";

	private static final String WALK_REMINDER = "If Tarn had a walk, how did it go? A few words are enough.";

	@LocalServerPort
	private int port;

	@Autowired
	private JsonMapper json;

	private ChatVisitor wren;

	private LocalDate tuesday;

	@DynamicPropertySource
	static void database(DynamicPropertyRegistry registry) {
		Databases.h2(registry);
	}

	@BeforeEach
	void aTuesdayAtNoonAndOneDogMore() {
		this.wren = new ChatVisitor(this.port, "wren");
		this.tuesday = now().toLocalDate().with(TemporalAdjusters.next(DayOfWeek.TUESDAY));
		moveTo(this.tuesday, "12:00");
		JsonNode enrolled = this.json.readTree(
				this.wren
					.send("POST", "/api/dogs",
							"{\"name\":\"Tarn\",\"timeZone\":\"Europe/London\",\"planMinutes\":20,\"walksPerDay\":2,"
									+ "\"walkTimes\":[\"08:00\",\"17:30\"]}")
					.body());
		this.wren.say("/start " + enrolled.get("joinCode").asString());
	}

	private ZonedDateTime now() {
		return this.wren.clock().atZone(ZONE);
	}

	/** Moves the clock and gives what came meanwhile. */
	private List<String> moveTo(LocalDate date, String time) {
		return moveTo(this.wren, date, time);
	}

	private List<String> moveTo(ChatVisitor person, LocalDate date, String time) {
		return person.moveTo(ZonedDateTime.of(date, LocalTime.parse(time), ZONE));
	}

	private ChatVisitor alder() {
		String share = this.wren.say("/share").get(0);
		ChatVisitor alder = new ChatVisitor(this.port, "alder");
		alder.say("/start " + share.replaceAll("(?s).*/start (\\w+).*", "$1"));
		return alder;
	}

	@Test
	void aWalkOfWhichNothingWasToldIsAskedAboutHalfAnHourAfterItsHour() {
		assertThat(moveTo(this.tuesday, "17:59")).isEmpty();
		assertThat(moveTo(this.tuesday, "18:01")).containsExactly(WALK);
		this.wren.say("25 minutes");
		this.wren.say("no, nothing");
		this.wren.say("same as usual");
		assertThat(moveTo(this.tuesday, "23:59")).isEmpty();
	}

	@Test
	void aWalkThatWasToldIsNotAskedAbout() {
		moveTo(this.tuesday, "17:45");
		this.wren.say("20 minutes, no trouble at all");
		this.wren.say("same as usual");
		assertThat(moveTo(this.tuesday, "23:00")).isEmpty();
	}

	@Test
	void aDayWithoutAWalkIsNotAskedAbout() {
		this.wren.say("no walk today");
		assertThat(moveTo(this.tuesday, "23:00")).isEmpty();
	}

	@Test
	void noWalkTodayAnswersForTheOtherWalksOfTheDayToo() {
		LocalDate wednesday = this.tuesday.plusDays(1);
		moveTo(wednesday, "07:31");
		this.wren.say("same as usual");
		assertThat(moveTo(wednesday, "08:31")).containsExactly(WALK);
		this.wren.say("no walk today");
		assertThat(moveTo(wednesday, "23:00")).isEmpty();
	}

	@Test
	void aWalkThatWasNotAnsweredIsRemindedOfOnce() {
		moveTo(this.tuesday, "18:01");
		assertThat(moveTo(this.tuesday, "20:01")).containsExactly(WALK_REMINDER);
		assertThat(moveTo(this.tuesday, "23:59")).isEmpty();
	}

	@Test
	void aMorningThatWasNotAnsweredIsRemindedOfOnceAndItsAnswerStillCounts() {
		LocalDate wednesday = this.tuesday.plusDays(1);
		moveTo(wednesday, "00:10");
		assertThat(moveTo(wednesday, "07:31")).containsExactly(MORNING);
		assertThat(moveTo(wednesday, "09:31")).containsExactly(MORNING_REMINDER);
		assertThat(this.wren.say("same as usual").get(0)).startsWith("All noted: this morning; as usual.");
	}

	@Test
	void aMorningThatWasAnsweredIsNotRemindedOf() {
		LocalDate wednesday = this.tuesday.plusDays(1);
		moveTo(wednesday, "07:31");
		this.wren.say("same as usual");
		this.wren.say("nothing");
		assertThat(moveTo(wednesday, "08:29")).isEmpty();
		assertThat(moveTo(wednesday, "08:31")).containsExactly(WALK);
		this.wren.say("no walk");
		assertThat(moveTo(wednesday, "17:59")).isEmpty();
	}

	@Test
	void aQuestionThatWaitsIsNotPushedAside() {
		LocalDate wednesday = this.tuesday.plusDays(1);
		moveTo(wednesday, "07:31");
		assertThat(moveTo(wednesday, "08:59")).isEmpty();
		this.wren.say("same as usual");
		this.wren.say("nothing");
		assertThat(moveTo(wednesday, "09:01")).containsExactly(WALK);
	}

	@Test
	void nothingComesInTheQuietHours() {
		moveTo(this.tuesday, "21:29");
		assertThat(moveTo(this.tuesday.plusDays(1), "07:29")).isEmpty();
	}

	@Test
	void onlyOneIsAskedAndWhenThatOneDoesNotAnswerTheOtherOne() {
		ChatVisitor alder = alder();
		LocalDate wednesday = this.tuesday.plusDays(1);
		moveTo(wednesday, "07:31");
		assertThat(alder.look()).doesNotContain(MORNING);
		assertThat(moveTo(alder, wednesday, "09:31")).containsExactly(MORNING);
		assertThat(moveTo(alder, wednesday, "12:00")).doesNotContain(MORNING, MORNING_REMINDER);
	}

	@Test
	void whoWantsNoMessagesIsNotAsked() {
		ChatVisitor alder = alder();
		this.wren.say("/stop");
		LocalDate wednesday = this.tuesday.plusDays(1);
		assertThat(moveTo(wednesday, "07:31")).isEmpty();
		assertThat(alder.look()).contains(MORNING);
	}

	@Test
	void onSundaysComesOneQuestionForTheWeekAndItsAnswerIsKeptInTheOwnersWords() {
		LocalDate firstSunday = this.tuesday.with(TemporalAdjusters.next(DayOfWeek.SUNDAY));
		assertThat(moveTo(firstSunday, "21:29")).noneMatch((line) -> line.startsWith("One question for the week"));
		LocalDate sunday = firstSunday.plusWeeks(1);
		moveTo(sunday, "07:31");
		this.wren.say("same as usual");
		this.wren.say("nothing");
		assertThat(moveTo(sunday, "08:31")).anyMatch((line) -> line.startsWith("One question for the week"));
		assertThat(moveTo(sunday.plusDays(1), "07:00")).noneMatch((line) -> line.startsWith("One question"));
	}

	@Test
	void aHabitThatMovesIsLearnedFromTheJournal() {
		for (int day = 1; day <= 8; day++) {
			LocalDate date = this.tuesday.plusDays(day);
			moveTo(date, "14:25");
			this.wren.say("we walked 20 minutes at 2pm, no trouble at all, same as usual");
		}
		LocalDate last = this.tuesday.plusDays(9);
		moveTo(last, "07:31");
		this.wren.say("same as usual");
		this.wren.say("nothing");
		assertThat(moveTo(last, "14:29")).isEmpty();
		assertThat(moveTo(last, "14:31")).containsExactly(WALK);
	}

	@Test
	void hoursAreShownAndChangedInPlainWords() {
		assertThat(this.wren.say("/hours")).singleElement()
			.asString()
			.startsWith("I ask in the morning at 07:30. I expect Tarn's walks around 08:00 and 17:30.");
		List<String> changed = this.wren.say("mornings at 8, walks at 13:00, not on Thursdays");
		assertThat(changed.get(0)).isEqualTo("Done.");
		assertThat(changed.get(1)).startsWith("I ask in the morning at 08:00. I expect Tarn's walks around 13:00.")
			.contains("I do not ask on Thursdays.");
		assertThat(moveTo(this.tuesday, "13:29")).isEmpty();
		assertThat(moveTo(this.tuesday, "13:31")).containsExactly(WALK);
		this.wren.say("no walk");
		LocalDate wednesday = this.tuesday.plusDays(1);
		assertThat(moveTo(wednesday, "07:59")).isEmpty();
		assertThat(moveTo(wednesday, "08:01")).containsExactly(MORNING);
		this.wren.say("same as usual");
		this.wren.say("/hours no walk questions");
		assertThat(moveTo(wednesday.plusDays(1), "23:00")).isEmpty();
		assertThat(moveTo(wednesday.plusDays(2), "08:01")).containsExactly(MORNING);
	}

	@Test
	void aWishAboutHoursThatIsNotUnderstoodIsToldSo() {
		assertThat(this.wren.say("/hours whenever")).singleElement()
			.asString()
			.startsWith("Sorry, I did not follow that. You could say: /hours mornings at 8");
	}

}
