package measuredwalk.telegram;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicLong;

import com.fasterxml.jackson.databind.JsonNode;
import measuredwalk.household.Dog;
import measuredwalk.household.Enrolment;
import measuredwalk.household.Households;
import measuredwalk.household.NewDog;
import measuredwalk.journal.Attached;
import measuredwalk.journal.AttachmentKind;
import measuredwalk.journal.Attachments;
import measuredwalk.journal.Journal;
import measuredwalk.journal.WalkEntry;
import measuredwalk.messaging.Attachment;
import measuredwalk.messaging.Chat;
import measuredwalk.messaging.Chats;
import measuredwalk.messaging.Inbox;
import measuredwalk.messaging.Outbox;
import measuredwalk.messaging.OutgoingMessage;
import org.awaitility.Awaitility;
import org.awaitility.core.ConditionFactory;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.context.SpringBootTest.WebEnvironment;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * The whole application talks to a stand-in of the Bot API; each database has its own
 * subclass.
 */
@SpringBootTest(webEnvironment = WebEnvironment.RANDOM_PORT, properties = { "measuredwalk.telegram.chat-pause=1ms",
		"measuredwalk.telegram.messages-per-second=500", "measuredwalk.telegram.long-poll=2s" })
abstract class TelegramStory {

	private static final BotApiStandIn api = new BotApiStandIn();

	private static final StandInPeople people = new StandInPeople(api.updates(), 500_000);

	private static final AtomicLong nextChat = new AtomicLong(9001);

	@Autowired
	private Households households;

	@Autowired
	private Journal journal;

	@Autowired
	private Attachments attachments;

	@Autowired
	private Chats chats;

	@Autowired
	private Inbox inbox;

	@Autowired
	private Outbox outbox;

	@Autowired
	private JoinLinks joinLinks;

	@Autowired
	private JdbcClient database;

	@LocalServerPort
	private int port;

	private final long chat = nextChat.getAndIncrement();

	@DynamicPropertySource
	static void standIn(DynamicPropertyRegistry registry) {
		registry.add("measuredwalk.telegram.token", () -> BotApiStandIn.TOKEN);
		registry.add("measuredwalk.telegram.api-url", api::url);
	}

	@AfterEach
	void nothingIsLeftUnconfirmed() {
		eventually().until(() -> api.updates().unconfirmed() == 0);
	}

	@Test
	void introducesItselfWithItsCommands() {
		Set<String> described = ResourceBundle.getBundle("measuredwalk.telegram.commands").keySet();
		eventually().untilAsserted(() -> assertThat(api.commands()).containsExactlyInAnyOrderElementsOf(described));
		eventually().untilAsserted(() -> assertThat(this.joinLinks.to("ABC"))
			.contains("https://t.me/" + BotApiStandIn.BOT_NAME + "?start=ABC"));
	}

	@Test
	void tellsItsCommandsInSpanishToo() {
		eventually()
			.untilAsserted(() -> assertThat(api.described("es", "walk")).isEqualTo("Cuéntame cómo fue un paseo"));
		assertThat(api.described("", "walk")).isEqualTo("Tell me how a walk went");
	}

	@Test
	void offersTheLanguageOfTheChatProgramAndSetsUpInIt() {
		people.sayFrom(this.chat, "es-MX", "/start");
		eventually().untilAsserted(() -> assertThat(api.textsTo(this.chat)).containsExactly("What is your dog called?",
				"¿Prefieres que te hable en español?"));
		assertThat(api.lastTo(this.chat).labels()).containsExactly("Español", "English (British words)");
		people.say(this.chat, "Español");
		eventually().untilAsserted(() -> assertThat(api.lastTo(this.chat).text()).startsWith("¿Cómo se llama tu perr"));
		people.say(this.chat, "Canela");
		eventually()
			.untilAsserted(() -> assertThat(api.lastTo(this.chat).text()).contains("¿Cuántos minutos camina Canela"));
		people.say(this.chat, "un cuarto de hora");
		eventually().untilAsserted(() -> assertThat(api.textsTo(this.chat))
			.anySatisfy((text) -> assertThat(text).startsWith("Gracias. Empiezo con calma: 2 paseos de 15 minutos")));
		people.say(this.chat, "18 minutos, sin cojera");
		eventually().untilAsserted(() -> assertThat(api.textsTo(this.chat))
			.anySatisfy((text) -> assertThat(text).startsWith("Apuntado: 18 minutos hoy; sin cojera")));
	}

	@Test
	void joinsByDeepLinkAndWritesAWalkDownOnceThoughItComesThreeTimes() {
		Dog dog = joined(this.chat);
		JsonNode told = people.say(this.chat, "She did 23 minutes, no signs");
		people.again(told);
		people.again(told);
		eventually().until(() -> api.updates().unconfirmed() == 0);
		eventually().untilAsserted(() -> assertThat(minutesOf(dog.id())).containsExactly(23.0));
		assertThat(this.inbox.of(chatId())).filteredOn((each) -> each.text().contains("23")).hasSize(1);
	}

	@Test
	void takesUpdatesWhoseIdsJumpLower() {
		Dog dog = joined(this.chat);
		people.goOnFrom(17 + nextChat.get());
		people.say(this.chat, "21 minutes today, all fine");
		eventually().untilAsserted(() -> assertThat(minutesOf(dog.id())).containsExactly(21.0));
		people.goOnFrom(500_000 + 1000 * nextChat.get());
	}

	@Test
	void setsAnUnreadableUpdateAsideAndGoesOn() {
		Dog dog = joined(this.chat);
		JsonNode nonsense = people.nonsense();
		people.say(this.chat, "22 minutes today, all fine");
		eventually().untilAsserted(() -> assertThat(minutesOf(dog.id())).containsExactly(22.0));
		assertThat(this.database.sql("select raw from dead_update where update_key like ?")
			.param(nonsense.path("update_id").asText() + "/%")
			.query(String.class)
			.list()).hasSize(1).first().asString().contains("not");
	}

	@Test
	void takesAPressedButtonLikeTypedWordsAndADoublePressOnce() {
		joined(this.chat);
		people.say(this.chat, "/walk");
		eventually().untilAsserted(() -> assertThat(api.lastTo(this.chat).labels()).contains("20 minutes"));
		StandInMessage question = api.lastTo(this.chat);
		String twenty = question.buttons().get(question.labels().indexOf("20 minutes"));
		int answered = api.calls("answerCallbackQuery");
		people.press(this.chat, question, twenty);
		people.press(this.chat, question, twenty);
		eventually().until(() -> api.calls("answerCallbackQuery") == answered + 2);
		assertThat(this.inbox.of(chatId())).filteredOn((each) -> each.text().equals("20 minutes")).hasSize(1);
	}

	@Test
	void ignoresAButtonThatAnotherChatWasOffered() {
		joined(this.chat);
		people.say(this.chat, "/walk");
		eventually().untilAsserted(() -> assertThat(api.lastTo(this.chat).buttons()).isNotEmpty());
		StandInMessage question = api.lastTo(this.chat);
		long stranger = nextChat.getAndIncrement();
		int answered = api.calls("answerCallbackQuery");
		people.press(stranger, question, question.buttons().get(0));
		eventually().until(() -> api.calls("answerCallbackQuery") == answered + 1);
		assertThat(this.inbox.of(this.chats.at("telegram", String.valueOf(stranger)).id())).isEmpty();
	}

	@Test
	void answersAVoiceMessageKindly() {
		joined(this.chat);
		people.speak(this.chat);
		eventually().untilAsserted(() -> assertThat(api.lastTo(this.chat).text()).contains("cannot listen"));
	}

	@Test
	void readsTheWordsUnderAPictureAndKeepsThePicture() {
		Dog dog = joined(this.chat);
		people.show(this.chat, "24 minutes, no signs");
		eventually().untilAsserted(() -> assertThat(minutesOf(dog.id())).containsExactly(24.0));
		assertThat(this.inbox.of(chatId()))
			.anyMatch((each) -> new Attachment(Attachment.Kind.PHOTO, "photo-file").equals(each.attachment()));
		UUID walk = this.journal.walks(dog.id()).get(0).id();
		assertThat(this.attachments.of(dog.id())).singleElement().satisfies((each) -> {
			assertThat(each.entryId()).isEqualTo(walk);
			assertThat(each.reference()).isEqualTo("photo-file");
			assertThat(each.kind()).isEqualTo(AttachmentKind.PHOTO);
		});
	}

	@Test
	void putsAPictureWithoutWordsToWhatWasToldLastAndAsksForWords() {
		Dog dog = joined(this.chat);
		people.say(this.chat, "24 minutes, no signs");
		eventually().untilAsserted(() -> assertThat(minutesOf(dog.id())).containsExactly(24.0));
		people.show(this.chat, "");
		eventually()
			.untilAsserted(() -> assertThat(api.lastTo(this.chat).text()).contains("log for the clinic", "few words"));
		UUID walk = this.journal.walks(dog.id()).get(0).id();
		assertThat(this.attachments.of(dog.id())).extracting(Attached::entryId).containsExactly(walk);
	}

	@Test
	void asksOfWhichDogAPictureIs() {
		Dog first = joined(this.chat);
		Dog second = this.households.enrolInto(newDog("Tarn"), first.household().id(), "test").orElseThrow().dog();
		people.show(this.chat, "");
		eventually().untilAsserted(() -> assertThat(api.lastTo(this.chat).labels()).contains("Bracken", "Tarn"));
		people.say(this.chat, "Tarn");
		eventually().untilAsserted(() -> assertThat(this.attachments.of(second.id())).hasSize(1));
		assertThat(this.attachments.of(first.id())).isEmpty();
	}

	@Test
	void takesWhatIsSaidInAGroupWhileAQuestionWaitsAsItsAnswer() {
		long group = -nextChat.getAndIncrement();
		Dog dog = joined(group);
		people.sayInGroup(group, "20 minutes and she was fine, not for the bot");
		people.say(group, "/walk");
		eventually().untilAsserted(() -> assertThat(api.lastTo(group).labels()).contains("20 minutes"));
		people.sayInGroup(group, "it was 28 minutes");
		eventually().untilAsserted(() -> assertThat(minutesOf(dog.id())).containsExactly(28.0));
	}

	@Test
	void isNotDistractedByTalkInAGroupWhileAQuestionWaits() {
		long group = -nextChat.getAndIncrement();
		Dog dog = joined(group);
		people.say(group, "/walk");
		eventually().untilAsserted(() -> assertThat(api.lastTo(group).labels()).contains("20 minutes"));
		int said = api.textsTo(group).size();
		people.sayInGroup(group, "did anybody buy milk");
		people.sayInGroup(group, "lol");
		people.sayInGroup(group, "about 28 minutes");
		eventually().untilAsserted(() -> assertThat(minutesOf(dog.id())).containsExactly(28.0));
		eventually().until(() -> api.textsTo(group).size() > said);
		assertThat(api.textsTo(group).subList(said, api.textsTo(group).size()))
			.noneMatch((text) -> text.startsWith("About how many minutes"));
		assertThat(this.inbox.of(this.chats.at("telegram", String.valueOf(group)).id())).extracting("text")
			.doesNotContain("did anybody buy milk", "lol");
	}

	@Test
	void tellsTheHouseholdOfAnotherDogThatTheClinicTakesOn() {
		Dog first = joined(this.chat);
		this.households.enrolInto(newDog("Tarn"), first.household().id(), "test");
		eventually().untilAsserted(
				() -> assertThat(api.textsTo(this.chat)).anyMatch((text) -> text.startsWith("You share Tarn's log now"))
					.anyMatch((text) -> text.startsWith("Tarn's plan:")));
	}

	@Test
	void takesEachUpdateOnceThoughTheyComeOutOfOrder() {
		Dog dog = joined(this.chat);
		eventually().until(() -> api.updates().unconfirmed() == 0);
		long id = 500_000 + 1000 * nextChat.incrementAndGet();
		whileNothingIsFetched(() -> {
			people.goOnFrom(id + 5);
			people.say(this.chat, "24 minutes this morning, no signs");
			people.goOnFrom(id);
			people.say(this.chat, "/log");
		});
		eventually().until(() -> api.updates().unconfirmed() == 0);
		eventually().untilAsserted(() -> assertThat(minutesOf(dog.id())).containsExactly(24.0));
		assertThat(this.inbox.of(chatId())).filteredOn((each) -> each.text().equals("/log")).hasSize(1);
		people.goOnFrom(500_000 + 1000 * nextChat.incrementAndGet());
	}

	@Test
	void losesOnlyWhatTelegramKeptForMoreThanADay() {
		joined(this.chat);
		eventually().until(() -> api.updates().unconfirmed() == 0);
		whileNothingIsFetched(() -> {
			people.say(this.chat, "told before the long outage");
			api.updates().pass(Duration.ofHours(25));
			people.say(this.chat, "/log");
		});
		eventually().until(() -> this.inbox.of(chatId()).stream().anyMatch((each) -> each.text().equals("/log")));
		assertThat(this.inbox.of(chatId())).extracting("text").doesNotContain("told before the long outage");
	}

	/** With a token that is not known nothing is fetched. */
	private void whileNothingIsFetched(Runnable work) {
		api.revokeToken(true);
		eventually().untilAsserted(() -> assertThat(get("/actuator/health/telegram").body()).contains("TROUBLED"));
		work.run();
		api.revokeToken(false);
	}

	@Test
	void keepsAGroupThatBecomesASupergroup() {
		long group = -nextChat.getAndIncrement();
		joined(group);
		long supergroup = group - 1_000_000_000_000L;
		people.migrate(group, supergroup);
		people.say(supergroup, "/log");
		eventually()
			.untilAsserted(() -> assertThat(api.textsTo(supergroup)).anyMatch((text) -> text.contains("Bracken")));
	}

	@Test
	void sendsToASupergroupOfWhichOnlyTheServersAnswerTells() {
		long group = -nextChat.getAndIncrement();
		joined(group);
		long supergroup = group - 1_000_000_000_000L;
		api.move(group, supergroup);
		write(group, "moved", "Do you hear me?");
		eventually().untilAsserted(() -> assertThat(api.textsTo(supergroup)).contains("Do you hear me?"));
		people.say(supergroup, "/log");
		eventually()
			.untilAsserted(() -> assertThat(api.textsTo(supergroup)).anyMatch((text) -> text.contains("Bracken")));
	}

	@Test
	void asksTheOtherCarerWhenTheFirstCannotBeReached() throws IOException, InterruptedException {
		Dog dog = joined(this.chat);
		long other = nextChat.getAndIncrement();
		people.say(other, "/start " + this.households.shareCode(dog.household().id(), "test"));
		eventually().until(() -> api.textsTo(other).stream().anyMatch((text) -> text.startsWith("You share")));
		api.block(this.chat);
		moveToNextMorning();
		eventually().untilAsserted(
				() -> assertThat(api.textsTo(other)).anyMatch((text) -> text.startsWith("Good morning. How did")));
	}

	@Test
	void takesAnEditedMessageAsANewOne() {
		joined(this.chat);
		JsonNode edit = people.edit(this.chat, "I meant the long lane");
		eventually().untilAsserted(
				() -> assertThat(this.inbox.of(chatId())).anyMatch((each) -> each.text().contains("long lane")));
		assertThat(this.inbox.lastKey("telegram", String.valueOf(this.chat))).get()
			.asString()
			.startsWith("edit:" + edit.path("update_id").asText());
	}

	@Test
	void speaksInAGroupOnlyWhenSpokenTo() {
		long group = -nextChat.getAndIncrement();
		people.sayInGroup(group, "shall we meet at the gate?");
		people.sayInGroup(group, "/help@SomeOtherBot");
		people.sayInGroup(group, "/help@" + BotApiStandIn.BOT_NAME);
		people.replyInGroup(group, "thanks");
		eventually().until(() -> api.textsTo(group).size() >= 2);
		assertThat(this.inbox.of(this.chats.at("telegram", String.valueOf(group)).id())).extracting("text")
			.containsExactly("/help@" + BotApiStandIn.BOT_NAME, "thanks");
	}

	@Test
	void leavesABlockedChatAloneServesOthersAndComesBack() {
		joined(this.chat);
		api.block(this.chat);
		write(this.chat, "one", "You will not see this.");
		eventually().until(() -> !this.chats.reachable(chatId()));
		long other = nextChat.getAndIncrement();
		people.say(other, "/help");
		eventually().until(() -> !api.textsTo(other).isEmpty());
		api.unblock(this.chat);
		people.membership(this.chat, "member");
		eventually().until(() -> this.chats.reachable(chatId()));
		write(this.chat, "two", "Here again.");
		eventually().untilAsserted(() -> assertThat(api.lastTo(this.chat).text()).isEqualTo("Here again."));
		people.membership(this.chat, "kicked");
		eventually().until(() -> !this.chats.reachable(chatId()));
	}

	@ParameterizedTest
	@EnumSource(names = "FORBIDDEN", mode = EnumSource.Mode.EXCLUDE)
	void sendsEachMessageInOrderWhateverGoesWrong(Fault fault) {
		write(this.chat, "first", "hello");
		eventually().until(() -> api.textsTo(this.chat).size() == 1);
		api.failSending(this.chat, fault);
		write(this.chat, "1", "first");
		write(this.chat, "2", "second");
		write(this.chat, "3", "third");
		eventually().untilAsserted(() -> assertThat(api.textsTo(this.chat)).endsWith("third"));
		List<String> expected = (fault == Fault.LOST_ANSWER) ? List.of("hello", "first", "first", "second", "third")
				: List.of("hello", "first", "second", "third");
		assertThat(api.textsTo(this.chat)).isEqualTo(expected);
	}

	@ParameterizedTest
	@EnumSource
	void takesEveryUpdateOnceWhateverGoesWrongInFetching(Fault fault) {
		Dog dog = joined(this.chat);
		api.failFetching(fault);
		people.say(this.chat, "26 minutes today, all fine");
		eventually().untilAsserted(() -> assertThat(minutesOf(dog.id())).containsExactly(26.0));
	}

	@Test
	void setsAMessageAsideThatCanNeverBeSent() {
		write(this.chat, "blank", " ");
		write(this.chat, "next", "This one can.");
		eventually().until(() -> api.textsTo(this.chat).contains("This one can."));
		assertThat(this.database.sql("select state from outbox_message where unique_key = ?")
			.param(this.chat + "/blank")
			.query(String.class)
			.single()).isEqualTo("dead");
	}

	@Test
	void sendsALongTextInPartsInOrder() {
		String text = "A line of some words.\n".repeat(500).strip();
		this.outbox.write(chatId(), this.chat + "/long", new OutgoingMessage(text, List.of("Yes", "No")));
		write(this.chat, "after", "And after it.");
		eventually().until(() -> api.textsTo(this.chat).contains("And after it."));
		List<String> texts = api.textsTo(this.chat);
		assertThat(texts).hasSize(4).allMatch((each) -> each.length() <= 4096);
		assertThat(String.join("\n", texts.subList(0, 3))).isEqualTo(text);
		assertThat(api.sent()).filteredOn((each) -> each.chatId() == this.chat)
			.extracting((each) -> each.labels().size())
			.containsExactly(0, 0, 2, 0);
	}

	@Test
	void getsOverASecondPollerAndStaysHealthy() throws InterruptedException, IOException {
		Dog dog = joined(this.chat);
		int calls = api.calls("deleteWebhook");
		assertThat(api.updates().get(0, 1, Duration.ZERO)).isNotNull();
		eventually().until(() -> api.calls("deleteWebhook") > calls);
		people.say(this.chat, "27 minutes today, all fine");
		eventually().untilAsserted(() -> assertThat(minutesOf(dog.id())).containsExactly(27.0));
		assertThat(get("/actuator/health").statusCode()).isEqualTo(200);
		assertThat(get("/actuator/health/telegram").body()).contains("UP");
	}

	@Test
	void saysSoWhenTheTokenIsWrongAndStillServesTheRest() throws IOException, InterruptedException {
		api.revokeToken(true);
		eventually().untilAsserted(() -> assertThat(get("/actuator/health/telegram").body()).contains("TROUBLED"));
		assertThat(get("/actuator/health").statusCode()).isEqualTo(200);
		api.revokeToken(false);
		eventually().untilAsserted(() -> assertThat(get("/actuator/health/telegram").body()).contains("UP"));
	}

	@Test
	void movesTheRehearsalClockOnlyWhenTelegramHasTakenWhatWasDue() throws IOException, InterruptedException {
		Dog dog = joined(this.chat);
		api.failSending(this.chat, Fault.FLOOD);
		int before = api.textsTo(this.chat).size();
		assertThat(moveToNextMorning()).isEqualTo(200);
		assertThat(api.textsTo(this.chat)).hasSize(before + 1).last().asString().contains(dog.name());
	}

	private int moveToNextMorning() throws IOException, InterruptedException {
		Instant morning = Instant.parse(get("/rehearsal/clock").body().replaceAll(".*\"now\":\"([^\"]+)\".*", "$1"))
			.truncatedTo(ChronoUnit.DAYS)
			.plus(1, ChronoUnit.DAYS)
			.plus(Duration.ofHours(8));
		HttpRequest move = HttpRequest.newBuilder(uri("/rehearsal/clock"))
			.header("Content-Type", "application/json")
			.POST(HttpRequest.BodyPublishers.ofString("{\"now\":\"" + morning + "\"}"))
			.build();
		return HttpClient.newHttpClient().send(move, HttpResponse.BodyHandlers.ofString()).statusCode();
	}

	private Dog joined(long address) {
		Enrolment enrolment = this.households.enrol(newDog("Bracken"), "test");
		people.say(address, "/start " + enrolment.joinCode());
		eventually().until(() -> api.textsTo(address).stream().anyMatch((text) -> text.startsWith("You share")));
		return enrolment.dog();
	}

	private static NewDog newDog(String name) {
		return new NewDog(name, 24.0, 11.0, true, null, ZoneId.of("Europe/London"), 20, 2, 6.0, 45.0, List.of(),
				List.of());
	}

	private void write(long address, String key, String text) {
		Chat to = this.chats.at("telegram", String.valueOf(address));
		this.outbox.write(to.id(), address + "/" + key, OutgoingMessage.of(text));
	}

	private long chatId() {
		return this.chats.at("telegram", String.valueOf(this.chat)).id();
	}

	private List<Double> minutesOf(UUID dogId) {
		return this.journal.walks(dogId).stream().map(WalkEntry::facts).map((facts) -> facts.minutes()).toList();
	}

	private HttpResponse<String> get(String path) throws IOException, InterruptedException {
		return HttpClient.newHttpClient()
			.send(HttpRequest.newBuilder(uri(path)).build(), HttpResponse.BodyHandlers.ofString());
	}

	private URI uri(String path) {
		return URI.create("http://127.0.0.1:" + this.port + path);
	}

	private static ConditionFactory eventually() {
		return Awaitility.await().atMost(Duration.ofSeconds(10)).pollInterval(Duration.ofMillis(20));
	}

}
