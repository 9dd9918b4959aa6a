package measuredwalk;

import java.util.List;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
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

/** The guide to seeing signs, through the real HTTP chat. */
@SpringBootTest(webEnvironment = WebEnvironment.RANDOM_PORT, properties = "measuredwalk.rehearsal=true")
@DirtiesContext
class LookingTests {

	private static final String OFFER = "Send /signs";

	@LocalServerPort
	private int port;

	@Autowired
	private JsonMapper json;

	private ChatVisitor wren;

	@DynamicPropertySource
	static void database(DynamicPropertyRegistry registry) {
		Databases.h2(registry);
	}

	@BeforeEach
	void enrolOneDogMoreAndJoinIt() {
		this.wren = new ChatVisitor(this.port, "wren");
		JsonNode enrolled = this.json.readTree(this.wren
			.send("POST", "/api/dogs",
					"{\"name\":\"Sorrel\",\"timeZone\":\"Europe/London\",\"planMinutes\":20,\"walksPerDay\":2}")
			.body());
		this.wren.say("/start " + enrolled.get("joinCode").asString());
		this.wren.moveOn("evening");
	}

	private static long offers(List<String> said) {
		return said.stream().filter((line) -> line.contains(OFFER)).count();
	}

	@Test
	void theGuideIsOfferedOnceWhenSignsAreFirstAskedAbout() {
		this.wren.say("/walk");
		assertThat(offers(this.wren.say("20 minutes"))).isEqualTo(1);
		this.wren.say("/walk");
		assertThat(offers(this.wren.say("15 minutes"))).isZero();
	}

	@Test
	void theGuideIsOfferedWhenASignIsToldWithDoubt() {
		assertThat(offers(this.wren.say("25 minutes, maybe she slowed down a bit, not sure"))).isEqualTo(1);
	}

	@Test
	void aPressedLessonIsShownWithItsDrawingAndTheQuestionThatWaitsIsAskedAgain() {
		this.wren.say("/walk");
		String question = this.wren.say("20 minutes").get(0);
		this.wren.say("/signs");
		List<String> titles = this.wren.choices();
		assertThat(titles).hasSize(5).contains("How to see slowing");
		List<String> lesson = this.wren.say("How to see slowing");
		assertThat(lesson).hasSize(2).last().isEqualTo(question);
		assertThat(lesson.get(0)).startsWith("Your dog drops back").hasLineCount(3);
		assertThat(picture()).contains("alt=\"A dog on a lead");
	}

	@Test
	void aPictureIsShownToItsOwnChatOnly() {
		this.wren.say("/signs slowing");
		String address = picture().replaceAll(".*src=\"([^\"]+)\".*", "$1").replace("&amp;", "&");
		assertThat(address).endsWith("as=wren");
		assertThat(this.wren.get(address)).contains("PNG");
		assertThat(this.wren.send("GET", address.replace("as=wren", "as=alder"), "").statusCode()).isEqualTo(404);
		assertThat(this.wren.send("GET", address.replace("as=wren", "as=newcomer"), "").statusCode()).isEqualTo(404);
	}

	private String picture() {
		String page = this.wren.rawPage();
		int start = page.lastIndexOf("<img");
		assertThat(start).isPositive();
		return page.substring(start, page.indexOf(">", start));
	}

	@Test
	void aLessonCanBeAskedForByItsName() {
		assertThat(this.wren.say("/signs stiff start").get(0)).startsWith("The first steps after a rest");
	}

}
