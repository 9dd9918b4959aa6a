package measuredwalk.escalation.delivery;

import java.awt.image.BufferedImage;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import java.util.UUID;

import javax.imageio.ImageIO;

import com.icegreen.greenmail.util.GreenMail;
import com.icegreen.greenmail.util.GreenMailUtil;
import com.icegreen.greenmail.util.ServerSetup;
import jakarta.mail.BodyPart;
import jakarta.mail.Message;
import jakarta.mail.MessagingException;
import jakarta.mail.Part;
import jakarta.mail.internet.MimeMessage;
import jakarta.mail.internet.MimeMultipart;
import measuredwalk.clock.Rehearsal;
import measuredwalk.escalation.Alert;
import measuredwalk.escalation.AlertLevel;
import measuredwalk.escalation.AlertStatus;
import measuredwalk.escalation.Alerts;
import measuredwalk.escalation.ClinicSetting;
import measuredwalk.escalation.ClinicSettings;
import measuredwalk.escalation.Evidence;
import measuredwalk.escalation.StaffChats;
import measuredwalk.escalation.UnsentAlerts;
import measuredwalk.household.Enrolment;
import measuredwalk.household.Households;
import measuredwalk.household.NewDog;
import measuredwalk.messaging.Chat;
import measuredwalk.messaging.Chats;
import measuredwalk.messaging.Inbox;
import measuredwalk.messaging.Outbox;
import measuredwalk.messaging.Post;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;

import static org.assertj.core.api.Assertions.assertThat;

/** Alerts on their way, with a real mail server and the rehearsal clock. */
@SpringBootTest(webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT,
		properties = { "measuredwalk.rehearsal=true", "spring.datasource.url=jdbc:h2:mem:delivery;MODE=PostgreSQL;"
				+ "DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH;DB_CLOSE_DELAY=-1" })
class AlertDeliveryTests {

	private static final GreenMail SERVER = new GreenMail(
			new ServerSetup(freePort(), "127.0.0.1", ServerSetup.PROTOCOL_SMTP));

	@Autowired
	private Alerts alerts;

	@Autowired
	private Households households;

	@Autowired
	private StaffChats staffChats;

	@Autowired
	private ClinicSettings settings;

	@Autowired
	private Chats chats;

	@Autowired
	private Inbox inbox;

	@Autowired
	private Outbox outbox;

	@Autowired
	private Post post;

	@Autowired
	private Rehearsal rehearsal;

	@Autowired
	private UnsentAlerts unsent;

	@Autowired
	private Clock clock;

	private Enrolment sorrel;

	private Chat owner;

	private Chat staff;

	/** Of its own choice, so that a server that was down comes back at the same one. */
	private static int freePort() {
		try (java.net.ServerSocket socket = new java.net.ServerSocket(0)) {
			return socket.getLocalPort();
		}
		catch (java.io.IOException ex) {
			throw new java.io.UncheckedIOException(ex);
		}
	}

	@BeforeAll
	static void startServer() {
		SERVER.start();
	}

	@AfterAll
	static void stopServer() {
		SERVER.stop();
	}

	@DynamicPropertySource
	static void mailServer(DynamicPropertyRegistry registry) {
		registry.add("spring.mail.host", () -> "127.0.0.1");
		registry.add("spring.mail.port", () -> SERVER.getSmtp().getPort());
	}

	@BeforeEach
	void enrol() throws com.icegreen.greenmail.store.FolderException {
		this.alerts.list(AlertStatus.OPEN).forEach((alert) -> this.alerts.close(alert.id(), "test", ""));
		SERVER.purgeEmailFromAllMailboxes();
		this.staffChats.all().forEach((chat) -> this.staffChats.stop(chat.chatId()));
		this.settings.set(ClinicSetting.ALERT_MAIL, "fern@clinic.example, nettle@clinic.example", "test");
		this.settings.set(ClinicSetting.OPENING_HOURS, "Mon-Fri 08:30-18:00", "test");
		this.sorrel = this.households.enrol(new NewDog("Sorrel", 30.0, 10.0, true, null, ZoneId.of("Europe/London"), 20,
				2, null, null, List.of(), List.of()), "test");
		this.owner = this.chats.at("browser", UUID.randomUUID().toString());
		this.households.join(this.sorrel.joinCode(), this.owner.id(), "Wren");
		this.staff = this.chats.at("browser", UUID.randomUUID().toString());
		this.staffChats.join(this.staffChats.makeCode("test"), this.staff.id());
		toMonday();
	}

	/** Monday at nine: the clinic is open. */
	private void toMonday() {
		Instant now = this.clock.instant();
		this.rehearsal.moveTo(now.atZone(ZoneId.of("Europe/London"))
			.with(java.time.temporal.TemporalAdjusters.next(java.time.DayOfWeek.MONDAY))
			.withHour(9)
			.withMinute(0)
			.toInstant());
	}

	private Alert raise(AlertLevel level) {
		Alert alert = this.alerts.raise(this.sorrel.dog().id(), level, "the dog collapsed",
				new Evidence("she collapsed on the grass", this.clock.instant(), "Wren"));
		this.rehearsal.moveTo(this.clock.instant().plusSeconds(1));
		return alert;
	}

	private void pass(Duration time) {
		this.rehearsal.moveTo(this.clock.instant().plus(time));
	}

	private List<String> told(Chat chat) {
		return this.outbox.of(chat.id()).stream().map((entry) -> entry.message().text()).toList();
	}

	private static List<String> mailTo(String address) {
		return Arrays.stream(SERVER.getReceivedMessages())
			.filter((mail) -> address.equals(recipient(mail)))
			.map(AlertDeliveryTests::subject)
			.toList();
	}

	private static String recipient(MimeMessage mail) {
		try {
			return mail.getRecipients(Message.RecipientType.TO)[0].toString();
		}
		catch (MessagingException ex) {
			throw new IllegalStateException(ex);
		}
	}

	private static String subject(MimeMessage mail) {
		try {
			return mail.getSubject();
		}
		catch (MessagingException ex) {
			throw new IllegalStateException(ex);
		}
	}

	@Test
	void anEmergencyReachesStaffChatAndMailAtOnceWithTheOwnersWords() {
		raise(AlertLevel.EMERGENCY);
		assertThat(told(this.staff)).singleElement()
			.asString()
			.contains("Emergency: Sorrel", "she collapsed on the grass");
		assertThat(mailTo("fern@clinic.example")).containsExactly("Emergency: Sorrel");
		assertThat(GreenMailUtil.getBody(SERVER.getReceivedMessages()[0])).contains("she collapsed on the grass");
		assertThat(mailTo("nettle@clinic.example")).isEmpty();
	}

	@Test
	void theMailShowsTheDaysBeforeAsAPictureInlineAndInWords() throws Exception {
		raise(AlertLevel.EMERGENCY);
		MimeMultipart parts = (MimeMultipart) SERVER.getReceivedMessages()[0].getContent();
		BodyPart words = parts.getBodyPart(0);
		BodyPart picture = parts.getBodyPart(1);
		assertThat(parts.getCount()).isEqualTo(2);
		assertThat(words.getContent().toString()).contains("she collapsed on the grass", "mean sign grade");
		assertThat(picture.getDisposition()).isEqualTo(Part.INLINE);
		assertThat(picture.getContentType()).startsWith("image/png");
		BufferedImage drawn = ImageIO.read(picture.getInputStream());
		assertThat(drawn.getWidth()).isEqualTo(720);
	}

	@Test
	void anUnseenEmergencyIsToldAgainAfterFifteenMinutesAndToTheNextContact() {
		raise(AlertLevel.EMERGENCY);
		pass(Duration.ofMinutes(14));
		assertThat(told(this.staff)).hasSize(1);
		pass(Duration.ofMinutes(2));
		assertThat(told(this.staff)).hasSize(2).last().asString().startsWith("Again, not seen yet.");
		assertThat(mailTo("nettle@clinic.example")).hasSize(1);
	}

	@Test
	void aSeenEmergencyIsNotToldAgain() {
		Alert alert = raise(AlertLevel.EMERGENCY);
		this.alerts.acknowledge(alert.id(), "fern", "");
		pass(Duration.ofHours(3));
		assertThat(told(this.staff)).hasSize(1);
	}

	@Test
	void aSameDayAlertIsToldAgainAfterTwoOpenHours() {
		raise(AlertLevel.SAME_DAY);
		pass(Duration.ofMinutes(119));
		assertThat(told(this.staff)).hasSize(1);
		pass(Duration.ofMinutes(2));
		assertThat(told(this.staff)).hasSize(2);
	}

	@Test
	void aReviewWaitsUntilTheClinicOpens() {
		pass(Duration.ofHours(10));
		raise(AlertLevel.REVIEW);
		assertThat(told(this.staff)).isEmpty();
		pass(Duration.ofHours(14));
		assertThat(told(this.staff)).hasSize(1);
	}

	@Test
	void theMailGoesAndThePageSaysSoWhenTheChatCannotBeReached() {
		Chat lost = this.chats.at("nowhere", UUID.randomUUID().toString());
		this.staffChats.stop(this.staff.id());
		this.staffChats.join(this.staffChats.makeCode("test"), lost.id());
		Alert alert = raise(AlertLevel.EMERGENCY);
		assertThat(mailTo("fern@clinic.example")).hasSize(1);
		assertThat(this.unsent.of(alert.id())).get().asString().contains("staff chat");
	}

	@Test
	void theChatGoesAndTheMailFollowsWhenItsServerWasDown() {
		SERVER.stop();
		Alert alert = raise(AlertLevel.EMERGENCY);
		assertThat(told(this.staff)).hasSize(1);
		assertThat(this.unsent.of(alert.id())).get().asString().contains("fern@clinic.example");
		SERVER.start();
		pass(Duration.ofMinutes(40));
		assertThat(mailTo("fern@clinic.example")).isNotEmpty();
		assertThat(this.unsent.of(alert.id())).isEmpty();
	}

	@Test
	void theOwnerIsToldOnceThatTheClinicHasSeenIt() {
		Alert alert = raise(AlertLevel.EMERGENCY);
		this.alerts.acknowledge(alert.id(), "fern", "Come in at eleven.");
		this.alerts.acknowledge(alert.id(), "nettle", "again");
		assertThat(told(this.owner)).filteredOn((text) -> text.startsWith("Your clinic has seen"))
			.containsExactly("Your clinic has seen what you wrote about Sorrel. They say: Come in at eleven.");
	}

	@Test
	void staffAcknowledgeFromTheirChat() {
		Alert alert = raise(AlertLevel.EMERGENCY);
		String button = this.outbox.of(this.staff.id()).get(0).message().choices().get(0);
		this.inbox.receive(this.staff, UUID.randomUUID().toString(), "Fern", button + " call the owner");
		this.post.deliverNow(this.staff.id());
		Alert seen = this.alerts.one(alert.id()).orElseThrow();
		assertThat(seen.status()).isEqualTo(AlertStatus.ACKNOWLEDGED);
		assertThat(seen.acknowledgedBy()).isEqualTo("Fern (by chat)");
		assertThat(seen.note()).isEqualTo("call the owner");
	}

	@Test
	void anOwnerCannotAcknowledge() {
		Alert alert = raise(AlertLevel.EMERGENCY);
		String button = this.outbox.of(this.staff.id()).get(0).message().choices().get(0);
		this.inbox.receive(this.owner, UUID.randomUUID().toString(), "Wren", button);
		this.post.deliverNow(this.owner.id());
		assertThat(this.alerts.one(alert.id()).orElseThrow().status()).isEqualTo(AlertStatus.OPEN);
	}

	@Test
	void moreWordsOfTheSameSpellAreAddedAndAWorseOneIsRaisedAgain() {
		Alert sameDay = raise(AlertLevel.SAME_DAY);
		Alert again = raise(AlertLevel.REVIEW);
		Alert worse = raise(AlertLevel.EMERGENCY);
		assertThat(again.id()).isEqualTo(sameDay.id());
		assertThat(again.evidence()).hasSize(2);
		assertThat(worse.id()).isNotEqualTo(sameDay.id());
	}

}
