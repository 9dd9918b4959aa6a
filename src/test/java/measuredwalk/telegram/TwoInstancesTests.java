package measuredwalk.telegram;

import java.io.IOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import org.awaitility.Awaitility;
import org.junit.jupiter.api.Test;
import org.springframework.context.ConfigurableApplicationContext;

import static org.assertj.core.api.Assertions.assertThat;

/** Two instances on one PostgreSQL. */
class TwoInstancesTests {

	private static final int CHATS = 10;

	private static final int EACH = 8;

	@Test
	void shareTheWorkAnswerEverythingOnceInOrderAndTakeOverFromEachOther() throws IOException {
		try (EmbeddedPostgres postgres = EmbeddedPostgres.start(); BotApiStandIn api = new BotApiStandIn()) {
			StandInPeople people = new StandInPeople(api.updates(), 100);
			ConfigurableApplicationContext first = ChannelOnly.start(api, settings(postgres, "first"));
			try (ConfigurableApplicationContext second = ChannelOnly.start(api, settings(postgres, "second"))) {
				talk(people, api, 0);
				assertThat(api.updates().superseded()).as("both polled").isZero();
				first.close();
				talk(people, api, 1);
				assertThat(second.isActive()).isTrue();
			}
			finally {
				first.close();
			}
		}
	}

	private static void talk(StandInPeople people, BotApiStandIn api, int round) {
		IntStream.range(0, CHATS * EACH)
			.forEach((number) -> people.say(1 + number % CHATS, "r" + round + " n" + number / CHATS));
		Awaitility.await()
			.atMost(Duration.ofSeconds(20))
			.untilAsserted(() -> assertThat(api.sent()).hasSize(CHATS * EACH * (round + 1)));
		IntStream.rangeClosed(1, CHATS).forEach((chat) -> assertThat(api.textsTo(chat)).isEqualTo(expected(round)));
	}

	private static List<String> expected(int lastRound) {
		List<String> texts = new ArrayList<>();
		for (int round = 0; round <= lastRound; round++) {
			for (int number = 0; number < EACH; number++) {
				texts.add("r" + round + " n" + number);
			}
		}
		return texts;
	}

	private static List<String> settings(EmbeddedPostgres postgres, String instance) {
		return List.of("--measuredwalk.instance=" + instance,
				"--spring.datasource.url=" + postgres.getJdbcUrl("postgres", "postgres"),
				"--spring.datasource.username=postgres", "--spring.datasource.password=postgres");
	}

}
