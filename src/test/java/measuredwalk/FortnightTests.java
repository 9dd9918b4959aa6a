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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
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
 * The picture of the fortnight, through the real HTTP chat. Each test begins on a
 * Saturday at noon with a dog of its own that has no walk hours.
 */
@SpringBootTest(webEnvironment = WebEnvironment.RANDOM_PORT, properties = "measuredwalk.rehearsal=true")
@DirtiesContext
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class FortnightTests {

	private static final ZoneId ZONE = ZoneId.of("Europe/London");

	private static final String GIST = "Tarn's fortnight: walks on 1 of 2 days, with signs on 1 of them.";

	@LocalServerPort
	private int port;

	@Autowired
	private JsonMapper json;

	private ChatVisitor wren;

	private LocalDate sunday;

	@DynamicPropertySource
	static void database(DynamicPropertyRegistry registry) {
		Databases.h2(registry);
	}

	@BeforeEach
	void aSaturdayAtNoonAndOneDogMore() {
		this.wren = new ChatVisitor(this.port, "wren");
		LocalDate saturday = now().toLocalDate().with(TemporalAdjusters.next(DayOfWeek.SATURDAY));
		this.sunday = saturday.plusDays(1);
		moveTo(this.wren, saturday, "12:00");
		JsonNode enrolled = this.json
			.readTree(this.wren
				.send("POST", "/api/dogs",
						"{\"name\":\"Tarn\",\"timeZone\":\"Europe/London\",\"planMinutes\":20,\"walksPerDay\":2}")
				.body());
		this.wren.say("/start " + enrolled.get("joinCode").asString());
	}

	private ZonedDateTime now() {
		return this.wren.clock().atZone(ZONE);
	}

	private List<String> moveTo(ChatVisitor person, LocalDate date, String time) {
		return person.moveTo(ZonedDateTime.of(date, LocalTime.parse(time), ZONE));
	}

	private void aWalkWithSigns() {
		this.wren.say("20 minutes, a bit stiff near the end");
	}

	private static List<String> pictures(List<String> lines) {
		return lines.stream().filter((line) -> line.contains("fortnight:")).toList();
	}

	@Test
	void theLogIsFollowedByThePictureWithItsGist() {
		aWalkWithSigns();
		List<String> log = this.wren.say("/log");
		assertThat(log).hasSize(2);
		assertThat(log.get(0)).startsWith("Tarn's last days:");
		assertThat(log.get(1)).isEqualTo("Tarn's fortnight: walks on 1 of 1 days, with signs on 1 of them.");
		String page = this.wren.rawPage();
		String picture = page.substring(page.lastIndexOf("<img"));
		assertThat(picture).contains("alt=\"Tarn, ")
			.contains("walks told of on 1 of 1 days, 20 minutes in all where 40 were suggested");
		String address = picture.replaceAll("(?s).*?src=\"([^\"]+)\".*", "$1").replace("&amp;", "&");
		assertThat(this.wren.get(address)).contains("PNG");
		assertThat(this.wren.send("GET", address.replace("as=wren", "as=newcomer"), "").statusCode()).isEqualTo(404);
	}

	@Test
	void theSameCanBeHadInWords() {
		aWalkWithSigns();
		assertThat(this.wren.say("/log in words")).singleElement()
			.asString()
			.matches("Sat .*: walked 20 of 40 minutes suggested; a bit stiff near the end; morning not told");
	}

	@Test
	void aDogOfWhichNothingWasToldHasNoPicture() {
		assertThat(this.wren.say("/log"))
			.containsExactly("Nothing is written down for Tarn yet. Tell me about the next walk.");
		assertThat(pictures(moveTo(this.wren, this.sunday, "23:00"))).isEmpty();
	}

	@Test
	void onSundayEveningItComesByItselfToEverybodyAtHomeOnce() {
		ChatVisitor alder = new ChatVisitor(this.port, "alder");
		alder.say("/start " + this.wren.say("/share").get(0).replaceAll("(?s).*/start (\\w+).*", "$1"));
		aWalkWithSigns();
		assertThat(pictures(moveTo(this.wren, this.sunday, "18:59"))).isEmpty();
		int before = alder.look().size();
		assertThat(pictures(moveTo(this.wren, this.sunday, "19:45")))
			.containsExactly(GIST + " I send this on Sundays. If you do not want it, say 'no more pictures'.");
		List<String> toAlder = alder.look();
		assertThat(pictures(toAlder.subList(before, toAlder.size()))).hasSize(1);
		assertThat(pictures(moveTo(this.wren, this.sunday.plusWeeks(1), "19:45"))).hasSize(1)
			.first()
			.asString()
			.doesNotContain("I send this on Sundays");
		assertThat(pictures(moveTo(this.wren, this.sunday.plusWeeks(2), "19:45"))).isEmpty();
	}

	@ParameterizedTest
	@ValueSource(strings = { "no more pictures", "Please stop sending the Sunday picture.", "don't send me pictures",
			"/hours no pictures" })
	void plainWordsEndItAndBringItBack(String words) {
		assertThat(String.join(" ", this.wren.say(words))).containsAnyOf("Good, no more pictures on Sundays.",
				"I send no picture on Sundays.");
		assertThat(this.wren.say("/hours").get(0)).contains("I send no picture on Sundays.");
		assertThat(this.wren.say("/hours pictures again").get(1)).contains("On Sundays I send a picture");
	}

	@Test
	void whoWantsNoneGetsNone() {
		aWalkWithSigns();
		this.wren.say("no more pictures");
		assertThat(pictures(moveTo(this.wren, this.sunday, "19:45"))).isEmpty();
	}

	@ParameterizedTest
	@ValueSource(strings = { "no picture today, she did 20 minutes", "stop, that picture was of another dog" })
	void otherWordsOfPicturesEndNothing(String words) {
		this.wren.say(words);
		assertThat(this.wren.say("/hours").get(0)).contains("On Sundays I send a picture");
	}

	@Test
	void whoIsQuietEarlierGetsItAnHourBefore() {
		aWalkWithSigns();
		this.wren.say("/hours quiet from 18:00 to 7:00");
		assertThat(pictures(moveTo(this.wren, this.sunday, "16:59"))).isEmpty();
		assertThat(pictures(moveTo(this.wren, this.sunday, "17:45"))).hasSize(1);
	}

	@Test
	void onADayOffNothingComes() {
		aWalkWithSigns();
		this.wren.say("/hours not on Sundays");
		assertThat(pictures(moveTo(this.wren, this.sunday.plusDays(1), "07:00"))).isEmpty();
	}

	@Test
	void rightAfterAnAlertNothingCheerfulComes() {
		this.wren.say("she collapsed on the walk and cannot get up");
		assertThat(pictures(moveTo(this.wren, this.sunday, "23:00"))).isEmpty();
	}

}
