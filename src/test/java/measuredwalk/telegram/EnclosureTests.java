package measuredwalk.telegram;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.ZoneId;
import java.util.List;
import java.util.concurrent.atomic.AtomicLong;

import measuredwalk.Databases;
import measuredwalk.household.Enrolment;
import measuredwalk.household.Households;
import measuredwalk.household.NewDog;
import measuredwalk.messaging.Chats;
import measuredwalk.messaging.Inbox;
import measuredwalk.messaging.MessageDocument;
import measuredwalk.messaging.MessagePicture;
import measuredwalk.messaging.Outbox;
import measuredwalk.messaging.OutgoingMessage;
import measuredwalk.records.Records;
import org.awaitility.Awaitility;
import org.awaitility.core.ConditionFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.context.SpringBootTest.WebEnvironment;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.annotation.DirtiesContext;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;

import static org.assertj.core.api.Assertions.assertThat;

/** Messages with pictures and files, by a stand-in of the Bot API. */
@SpringBootTest(webEnvironment = WebEnvironment.RANDOM_PORT,
		properties = { "measuredwalk.telegram.chat-pause=1ms", "measuredwalk.telegram.messages-per-second=500",
				"measuredwalk.telegram.long-poll=2s" })
@DirtiesContext
class EnclosureTests {

	private static final String WORDS = "A dog on a lead, drawn in lines.";

	private static final MessagePicture DRAWING = new MessagePicture("signs/slowing", WORDS);

	private static final BotApiStandIn api = new BotApiStandIn();

	private static final StandInPeople people = new StandInPeople(api.updates(), 500_000);

	private static final AtomicLong nextChat = new AtomicLong(9001);

	@Autowired
	private Households households;

	@Autowired
	private Chats chats;

	@Autowired
	private Inbox inbox;

	@Autowired
	private Outbox outbox;

	@Autowired
	private JdbcClient database;

	private final long chat = nextChat.getAndIncrement();

	@DynamicPropertySource
	static void settings(DynamicPropertyRegistry registry) {
		Databases.h2(registry);
		registry.add("measuredwalk.telegram.token", () -> BotApiStandIn.TOKEN);
		registry.add("measuredwalk.telegram.api-url", api::url);
	}

	@Test
	void aShortTextStandsUnderItsPictureWithItsButtons() {
		write(this.chat, new OutgoingMessage("She drops back – see?", List.of("Yes", "No")).with(DRAWING));
		List<StandInMessage> sent = sent(this.chat, 1);
		assertThat(sent.get(0).text()).isEqualTo("She drops back – see?");
		assertThat(sent.get(0).photo()).startsWith(0x89, 'P', 'N', 'G');
		assertThat(sent.get(0).labels()).containsExactly("Yes", "No");
	}

	@Test
	void aButtonUnderAPictureIsPressedLikeAnyOther() {
		write(this.chat, new OutgoingMessage("See?", List.of("Yes", "No")).with(DRAWING));
		StandInMessage sent = sent(this.chat, 1).get(0);
		people.press(this.chat, sent, sent.buttons().get(1));
		eventually()
			.untilAsserted(() -> assertThat(this.inbox.of(chatId(this.chat))).extracting("text").contains("No"));
	}

	@Test
	void aTextTooLongToStandUnderAPictureFollowsIt() {
		String text = "A line of some words.\n".repeat(300).strip();
		write(this.chat, new OutgoingMessage(text, List.of("Yes")).with(DRAWING));
		List<StandInMessage> sent = sent(this.chat, 3);
		assertThat(sent).extracting((each) -> each.photo() != null).containsExactly(true, false, false);
		assertThat(sent.get(0).text()).isEqualTo(WORDS);
		assertThat(sent.get(1).text() + "\n" + sent.get(2).text()).isEqualTo(text);
		assertThat(sent).extracting((each) -> each.labels().size()).containsExactly(0, 0, 1);
	}

	@ParameterizedTest
	@EnumSource(names = "FORBIDDEN", mode = EnumSource.Mode.EXCLUDE)
	void aPictureComesInOrderWhateverGoesWrong(Fault fault) {
		write(this.chat, OutgoingMessage.of("hello"));
		sent(this.chat, 1);
		api.failSending(this.chat, fault);
		write(this.chat, OutgoingMessage.of("look").with(DRAWING));
		write(this.chat, OutgoingMessage.of("after"));
		List<String> expected = (fault == Fault.LOST_ANSWER) ? List.of("hello", "look", "look", "after")
				: List.of("hello", "look", "after");
		assertThat(sent(this.chat, expected.size())).extracting(StandInMessage::text).isEqualTo(expected);
		assertThat(sent(this.chat, expected.size())).filteredOn((each) -> each.text().equals("look"))
			.allMatch((each) -> each.photo() != null);
	}

	@Test
	void whereAGroupForbidsPhotosTheTextComesAlone() {
		long group = -nextChat.getAndIncrement();
		api.forbidFiles(group);
		write(group, new OutgoingMessage("look", List.of("Yes")).with(DRAWING));
		StandInMessage sent = sent(group, 1).get(0);
		assertThat(sent.photo()).isNull();
		assertThat(sent.text()).isEqualTo("look");
		assertThat(sent.labels()).containsExactly("Yes");
	}

	@Test
	void aPictureFollowsItsGroupToANewAddress() {
		long group = -nextChat.getAndIncrement();
		long supergroup = group - 1_000_000_000_000L;
		api.move(group, supergroup);
		write(group, OutgoingMessage.of("look").with(DRAWING));
		assertThat(sent(supergroup, 1).get(0).photo()).isNotNull();
	}

	@Test
	void aPictureForAChatThatBlockedUsIsGivenUp() {
		api.block(this.chat);
		write(this.chat, OutgoingMessage.of("look").with(DRAWING));
		eventually().until(() -> this.database.sql("select state from outbox_message where chat_id = ?")
			.param(chatId(this.chat))
			.query(String.class)
			.single()
			.equals("dead"));
		assertThat(this.chats.reachable(chatId(this.chat))).isFalse();
	}

	@Test
	void aTextComesAloneWhenItsPictureCannotBeDrawn() {
		write(this.chat, OutgoingMessage.of("no such drawing").with(new MessagePicture("signs/none", WORDS)));
		write(this.chat, OutgoingMessage.of("no such kind").with(new MessagePicture("nothing/at-all", WORDS)));
		write(this.chat, OutgoingMessage.of("no kind").with(new MessagePicture("nothing", WORDS)));
		assertThat(sent(this.chat, 3)).allMatch((each) -> each.photo() == null)
			.extracting(StandInMessage::text)
			.containsExactly("no such drawing", "no such kind", "no kind");
	}

	@Test
	void anOwnerTakesTheRecordAlongAsAFile() {
		Enrolment enrolment = this.households.enrol(new NewDog("Bracken", 24.0, 11.0, true, null,
				ZoneId.of("Europe/London"), 20, 2, 6.0, 45.0, List.of(), List.of()), "test");
		people.say(this.chat, "/start " + enrolment.joinCode());
		people.say(this.chat, "20 minutes, =a bit stiff near the end");
		people.say(this.chat, "/export");
		eventually()
			.until(() -> api.textsTo(this.chat).stream().anyMatch((text) -> text.startsWith("How would you like")));
		people.say(this.chat, "/export csv");
		people.say(this.chat, "/export pdf");
		eventually().until(() -> files().size() == 2);
		StandInMessage table = files().get(0);
		assertThat(table.fileName()).matches("bracken-walks-\\d{4}-\\d\\d-\\d\\d\\.csv");
		assertThat(table.text()).contains("Bracken's record");
		assertThat(new String(table.document(), StandardCharsets.UTF_8)).contains("\"walk\",20,\"no\"",
				"\"20 minutes, =a bit stiff near the end\"");
		assertThat(files().get(1).fileName()).endsWith(".pdf");
		assertThat(files().get(1).document()).startsWith('%', 'P', 'D', 'F');
	}

	@Test
	void aFileThatCannotBeMadeOrSentIsTold() {
		MessageDocument none = new MessageDocument("record/00000000-0000-0000-0000-000000000000/CSV", "No file.");
		write(this.chat, OutgoingMessage.of("Here it is.").with(none));
		assertThat(sent(this.chat, 1).get(0).text()).isEqualTo("No file.");
		long group = -nextChat.getAndIncrement();
		api.forbidFiles(group);
		Enrolment enrolment = this.households.enrol(new NewDog("Moss", 24.0, 11.0, true, null,
				ZoneId.of("Europe/London"), 20, 2, 6.0, 45.0, List.of(), List.of()), "test");
		write(group, OutgoingMessage.of("Here it is.")
			.with(new MessageDocument(Records.name(enrolment.dog(), Records.Form.CSV), "No file.")));
		assertThat(sent(group, 1).get(0).text()).isEqualTo("No file.");
	}

	private List<StandInMessage> files() {
		return api.sent().stream().filter((each) -> each.chatId() == this.chat && each.document() != null).toList();
	}

	private void write(long address, OutgoingMessage message) {
		this.outbox.write(chatId(address), address + "/" + message.text().hashCode(), message);
	}

	private long chatId(long address) {
		return this.chats.at("telegram", String.valueOf(address)).id();
	}

	private static List<StandInMessage> sent(long address, int count) {
		eventually().until(() -> api.sent().stream().filter((each) -> each.chatId() == address).count() >= count);
		return api.sent().stream().filter((each) -> each.chatId() == address).toList();
	}

	private static ConditionFactory eventually() {
		return Awaitility.await().atMost(Duration.ofSeconds(10)).pollInterval(Duration.ofMillis(20));
	}

}
