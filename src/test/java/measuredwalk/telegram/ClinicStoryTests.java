package measuredwalk.telegram;

import java.net.http.HttpResponse;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import com.icegreen.greenmail.util.GreenMail;
import com.icegreen.greenmail.util.ServerSetup;
import measuredwalk.clinic.Caller;
import measuredwalk.clock.Rehearsal;
import org.awaitility.Awaitility;
import org.awaitility.core.ConditionFactory;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.context.SpringBootTest.WebEnvironment;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * A clinic's story from an empty database on: with the pages, a stand-in of the Bot API
 * and a real mail server.
 */
@SpringBootTest(webEnvironment = WebEnvironment.RANDOM_PORT,
		properties = { "measuredwalk.rehearsal=true", "measuredwalk.telegram.chat-pause=1ms",
				"measuredwalk.telegram.messages-per-second=500", "measuredwalk.telegram.long-poll=2s",
				"spring.datasource.url=jdbc:h2:mem:clinic-story;MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;"
						+ "DEFAULT_NULL_ORDERING=HIGH;DB_CLOSE_DELAY=-1" })
class ClinicStoryTests {

	private static final BotApiStandIn api = new BotApiStandIn();

	private static final StandInPeople people = new StandInPeople(api.updates(), 800_000);

	private static final GreenMail MAIL = new GreenMail(new ServerSetup(0, "127.0.0.1", ServerSetup.PROTOCOL_SMTP));

	private static final long OWNER = 6101;

	private static final long STAFF = 6202;

	/** How every PNG file begins (RFC 2083, 3.1). */
	private static final byte[] PNG = { (byte) 137, 'P', 'N', 'G', 13, 10, 26, 10 };

	private static final ZoneId LONDON = ZoneId.of("Europe/London");

	@LocalServerPort
	private int port;

	@Autowired
	private Rehearsal rehearsal;

	private Caller caller;

	@DynamicPropertySource
	static void standIns(DynamicPropertyRegistry registry) {
		MAIL.start();
		registry.add("measuredwalk.telegram.token", () -> BotApiStandIn.TOKEN);
		registry.add("measuredwalk.telegram.api-url", api::url);
		registry.add("spring.mail.host", () -> "127.0.0.1");
		registry.add("spring.mail.port", () -> MAIL.getSmtp().getPort());
	}

	@AfterAll
	static void stop() {
		MAIL.stop();
		api.close();
	}

	@Test
	void badDaysReachTheClinicByEachWayAndWhatItDoesReachesTheOwnerAndTheReport() throws Exception {
		this.caller = new Caller(this.port);
		this.caller.login("clinic", "rehearsal");
		set("ALERT_MAIL", "vet@clinic.example");
		set("OPENING_HOURS", "Mon-Sun 00:01-23:58");
		String codePage = enrolled("Thistle");
		String dog = found(codePage, "/clinic/dogs/([0-9a-f-]{36})");
		join(found(codePage, "/start ([A-Z0-9]{10})"));
		tellOfFourBadDays();

		String alert = eventuallyToldTo(STAFF, "Flare not settling");
		assertThat(alert).contains("Thistle", "a bit worse than usual");
		assertThat(api.sent())
			.filteredOn((sent) -> sent.chatId() == STAFF && sent.text().contains("Flare not settling"))
			.first()
			.satisfies((sent) -> assertThat(sent.photo()).startsWith(PNG));
		eventually().untilAsserted(() -> assertThat(MAIL.getReceivedMessages())
			.anyMatch((mail) -> String.valueOf(subject(mail)).contains("Review") && subject(mail).contains("Thistle")));
		assertThat(this.caller.get("/clinic").body()).contains("Flare not settling", "a bit worse than usual");

		people.say(STAFF, "seen " + found(alert, "seen ([0-9A-F]{6})") + " shorter walks for a week, see you Friday");
		eventuallyToldTo(STAFF, "Noted: Thistle");
		assertThat(eventuallyToldTo(OWNER, "Your clinic has seen"))
			.contains("shorter walks for a week, see you Friday");
		String id = Caller.json(this.caller.api("GET", "/api/alerts?status=acknowledged", "clinic:rehearsal", ""))
			.get(0)
			.get("id")
			.asString();
		this.caller.post("/clinic/alerts/" + id, "/clinic/alerts/" + id,
				Map.of("act", "close", "note", "better at the re-check"));

		assertThat(this.caller.get("/clinic/dogs/" + dog + "/report").body()).contains("Flare not settling",
				"(by chat)", "shorter walks for a week, see you Friday", "better at the re-check",
				"a bit worse than usual");
	}

	private void set(String setting, String text) {
		this.caller.post("/clinic/settings", "/clinic/settings", Map.of("setting", setting, "text", text));
	}

	/** Takes on a dog by the form; gives the page with the code to print. */
	private String enrolled(String name) {
		HttpResponse<String> answer = this.caller.post("/clinic/dogs/new", "/clinic/dogs",
				Map.of("name", name, "planMinutes", "16", "walksPerDay", "2", "timeZone", LONDON.getId()));
		return this.caller.get(Caller.location(answer)).body();
	}

	private void join(String joinCode) {
		this.caller.post("/clinic/people", "/clinic/alert-codes", Map.of());
		people.say(STAFF, "/start " + found(this.caller.get("/clinic/people").body(), "/start ([A-Z0-9]+)"));
		eventually().until(() -> !api.textsTo(STAFF).isEmpty());
		people.say(OWNER, "/start " + joinCode);
		eventuallyToldTo(OWNER, "Thistle");
	}

	private void tellOfFourBadDays() {
		for (int day = 1; day <= 4; day++) {
			LocalDate next = this.rehearsal.now().atZone(LONDON).toLocalDate().plusDays(1);
			this.rehearsal.moveTo(next.atTime(LocalTime.of(9, 0)).atZone(LONDON).toInstant());
			int before = api.textsTo(OWNER).size();
			people.say(OWNER, "stiff this morning for 20 minutes, a bit worse than usual");
			eventually().until(() -> api.textsTo(OWNER).size() > before);
		}
	}

	private static String eventuallyToldTo(long chat, String words) {
		eventually().until(() -> api.textsTo(chat).stream().anyMatch((text) -> text.contains(words)));
		return api.textsTo(chat)
			.stream()
			.filter((text) -> text.contains(words))
			.reduce((one, other) -> other)
			.orElseThrow();
	}

	private static String subject(jakarta.mail.internet.MimeMessage mail) {
		try {
			return mail.getSubject();
		}
		catch (jakarta.mail.MessagingException ex) {
			throw new IllegalStateException(ex);
		}
	}

	private static String found(String text, String pattern) {
		Matcher matcher = Pattern.compile(pattern).matcher(text);
		assertThat(matcher.find()).as(pattern + " in " + text).isTrue();
		return matcher.group(1);
	}

	private static ConditionFactory eventually() {
		return Awaitility.await().atMost(Duration.ofSeconds(60)).pollInterval(Duration.ofMillis(100));
	}

}
