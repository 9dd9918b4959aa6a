package measuredwalk.telegram;

import java.time.Duration;
import java.util.List;
import java.util.stream.IntStream;

import measuredwalk.messaging.Chat;
import measuredwalk.messaging.Chats;
import measuredwalk.messaging.Inbox;
import measuredwalk.messaging.Outbox;
import measuredwalk.messaging.OutgoingMessage;
import org.awaitility.Awaitility;
import org.awaitility.core.ConditionFactory;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.support.TransactionTemplate;

import static org.assertj.core.api.Assertions.assertThat;

/** Many messages at once, in and out. */
class BusyDayTests {

	private static final int PROMPTS = 60;

	private static final BotApiStandIn api = new BotApiStandIn();

	private static final StandInPeople people = new StandInPeople(api.updates(), 1);

	private static ConfigurableApplicationContext application;

	@BeforeAll
	static void start() {
		application = ChannelOnly.start(api,
				List.of("--measuredwalk.telegram.messages-per-second=30", "--measuredwalk.telegram.deep-inbox=0",
						"--measuredwalk.telegram.long-poll=1s",
						"--spring.datasource.url=jdbc:h2:mem:busy;MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;"
								+ "DEFAULT_NULL_ORDERING=HIGH"));
	}

	@AfterAll
	static void stop() {
		application.close();
		api.close();
	}

	@Test
	void answersBeforeThePromptsThatStillWait() {
		IntStream.range(0, PROMPTS).forEach((number) -> prompt(100 + number, "Good morning."));
		people.say(150, "hello");
		people.say(99, "hello");
		eventually().until(() -> api.textsTo(99).contains("hello") && api.textsTo(150).contains("hello"));
		assertThat(api.sent()).as("all prompts were sent first").hasSizeLessThan(PROMPTS);
		assertThat(api.textsTo(150)).as("an answer overtook in its own chat").containsExactly("Good morning.", "hello");
		eventually()
			.until(() -> IntStream.range(0, PROMPTS).noneMatch((number) -> api.textsTo(100 + number).isEmpty()));
	}

	@Test
	void fetchesNoMoreWhileTooManyMessagesWait() {
		people.say(300, "first");
		eventually().until(() -> api.textsTo(300).contains("first"));
		JdbcClient database = application.getBean(JdbcClient.class);
		long chatId = application.getBean(Chats.class).at("telegram", "300").id();
		application.getBean(TransactionTemplate.class).executeWithoutResult((status) -> {
			database.sql("select chat_id from chat_turn where chat_id = ? for update")
				.param(chatId)
				.query(Long.class)
				.single();
			people.say(300, "second");
			eventually().until(() -> application.getBean(Inbox.class).depth() == 1);
			int fetched = api.calls("getUpdates");
			people.say(300, "third");
			Awaitility.await()
				.during(Duration.ofMillis(500))
				.atMost(Duration.ofSeconds(5))
				.until(() -> api.calls("getUpdates") == fetched && api.updates().unconfirmed() > 0);
		});
		eventually().until(() -> api.textsTo(300).equals(List.of("first", "second", "third")));
	}

	private static void prompt(long address, String text) {
		Chat chat = application.getBean(Chats.class).at("telegram", String.valueOf(address));
		application.getBean(Outbox.class).write(chat.id(), "prompt/" + address, OutgoingMessage.of(text));
	}

	private static ConditionFactory eventually() {
		return Awaitility.await().atMost(Duration.ofSeconds(10)).pollInterval(Duration.ofMillis(10));
	}

}
