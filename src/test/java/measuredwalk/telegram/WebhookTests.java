package measuredwalk.telegram;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.util.List;

import com.fasterxml.jackson.databind.JsonNode;
import org.awaitility.Awaitility;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.springframework.context.ConfigurableApplicationContext;

import static org.assertj.core.api.Assertions.assertThat;

/** Updates that Telegram sends to us, and what anybody else may try. */
class WebhookTests {

	private static final String SECRET = "a-secret_for-tests";

	private static final BotApiStandIn api = new BotApiStandIn();

	/** The webhook's updates are made here and never fetched. */
	private static final StandInPeople people = new StandInPeople(new StandInUpdates(), 1);

	private static ConfigurableApplicationContext application;

	@BeforeAll
	static void start() {
		application = ChannelOnly.start(api,
				List.of("--measuredwalk.telegram.webhook-url=https://bot.example.org/hooks/telegram",
						"--measuredwalk.telegram.webhook-secret=" + SECRET,
						"--spring.datasource.url=jdbc:h2:mem:webhook;MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;"
								+ "DEFAULT_NULL_ORDERING=HIGH"));
	}

	@AfterAll
	static void stop() {
		application.close();
		api.close();
	}

	@Test
	void saysToTelegramWhereUpdatesGoAndDoesNotPoll() {
		eventually(() -> assertThat(api.webhook()).contains("https://bot.example.org/hooks/telegram", SECRET));
		eventually(() -> assertThat(api.commands()).contains("walk"));
		assertThat(api.calls("getUpdates")).isZero();
	}

	@Test
	void answersAnUpdateThatIsSentTwiceOnce() throws IOException, InterruptedException {
		JsonNode update = people.say(11, "hello");
		assertThat(post(update.toString(), SECRET)).isEqualTo(200);
		assertThat(post(update.toString(), SECRET)).isEqualTo(200);
		assertThat(post(people.say(11, "again").toString(), SECRET)).isEqualTo(200);
		eventually(() -> assertThat(api.textsTo(11)).containsExactly("hello", "again"));
	}

	@Test
	void turnsAwayWhoDoesNotKnowTheSecret() throws IOException, InterruptedException {
		assertThat(post(people.say(12, "forged").toString(), "a-secret_for-testz")).isEqualTo(403);
		assertThat(post(people.say(12, "forged").toString(), null)).isEqualTo(403);
		assertThat(post(people.say(12, "genuine").toString(), SECRET)).isEqualTo(200);
		eventually(() -> assertThat(api.textsTo(12)).containsExactly("genuine"));
	}

	@Test
	void takesAnUnreadableUpdateSoThatItDoesNotComeForEver() throws IOException, InterruptedException {
		assertThat(post(people.nonsense().toString(), SECRET)).isEqualTo(200);
		assertThat(post("no JSON at all", SECRET)).isEqualTo(400);
	}

	private static int post(String body, String secret) throws IOException, InterruptedException {
		String port = application.getEnvironment().getProperty("local.server.port");
		HttpRequest.Builder request = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + "/hooks/telegram"))
			.header("Content-Type", "application/json")
			.POST(HttpRequest.BodyPublishers.ofString(body));
		if (secret != null) {
			request.header("X-Telegram-Bot-Api-Secret-Token", secret);
		}
		return HttpClient.newHttpClient().send(request.build(), HttpResponse.BodyHandlers.discarding()).statusCode();
	}

	private static void eventually(org.awaitility.core.ThrowingRunnable assertion) {
		Awaitility.await().atMost(Duration.ofSeconds(10)).untilAsserted(assertion);
	}

}
