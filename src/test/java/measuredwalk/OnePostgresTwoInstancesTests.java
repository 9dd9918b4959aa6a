package measuredwalk;

import java.io.IOException;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import measuredwalk.clinic.Caller;
import measuredwalk.household.Dog;
import measuredwalk.household.Enrolment;
import measuredwalk.household.Households;
import measuredwalk.household.NewDog;
import measuredwalk.journal.Journal;
import measuredwalk.journal.WalkEntry;
import measuredwalk.messaging.Chat;
import measuredwalk.messaging.Chats;
import measuredwalk.messaging.Inbox;
import measuredwalk.messaging.Outbox;
import measuredwalk.messaging.OutboxEntry;
import measuredwalk.prompts.Prompts;
import org.awaitility.Awaitility;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.support.TransactionTemplate;

import static org.assertj.core.api.Assertions.assertThat;

/** Two instances of the whole application work on one PostgreSQL at the same time. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class OnePostgresTwoInstancesTests {

	private static final int ROUNDS = 12;

	private static final List<String> PAGES = List.of("/clinic", "/clinic/dogs", "/clinic/alerts", "/clinic/audit",
			"/clinic/settings", "/clinic/people", "/clinic/record", "/clinic/dogs/new");

	private final List<ConfigurableApplicationContext> instances = new ArrayList<>();

	private final ExecutorService side = Executors.newFixedThreadPool(2);

	private EmbeddedPostgres postgres;

	private int people;

	@BeforeAll
	void start() throws IOException {
		this.postgres = EmbeddedPostgres.start();
		for (String name : List.of("first", "second")) {
			this.instances.add(new SpringApplicationBuilder(MeasuredWalk.class).run("--server.port=0",
					"--measuredwalk.instance=" + name, "--measuredwalk.rehearsal=false",
					"--logging.level.measuredwalk.messaging=ERROR", "--measuredwalk.staff.username=clinic",
					"--measuredwalk.staff.password=a-password-for-tests",
					"--spring.datasource.url=" + this.postgres.getJdbcUrl("postgres", "postgres"),
					"--spring.datasource.username=postgres", "--spring.datasource.password=postgres"));
		}
	}

	@AfterAll
	void stop() throws IOException {
		this.side.shutdownNow();
		this.instances.forEach(ConfigurableApplicationContext::close);
		this.postgres.close();
	}

	private <T> T first(Class<T> service) {
		return this.instances.get(0).getBean(service);
	}

	/** Does the same on both instances at the same moment. */
	private void onBoth(OnInstance work) throws Exception {
		CyclicBarrier together = new CyclicBarrier(2);
		List<Future<?>> both = new ArrayList<>();
		for (int number = 0; number < 2; number++) {
			int instance = number;
			both.add(this.side.submit(() -> {
				together.await();
				work.run(instance, this.instances.get(instance));
				return null;
			}));
		}
		for (Future<?> each : both) {
			each.get();
		}
	}

	private interface OnInstance {

		void run(int number, ConfigurableApplicationContext instance) throws Exception;

	}

	private Enrolment enrolled(String name) {
		return enrolled(name, ZoneId.of("Europe/London"));
	}

	private Enrolment enrolled(String name, ZoneId zone) {
		return first(Households.class).enrol(
				new NewDog(name, 20.0, 9.0, true, null, zone, 20, 2, null, null, List.of(), List.of("nsaid")), "test");
	}

	private Chat joined(Dog dog) {
		Households households = first(Households.class);
		Chat chat = first(Chats.class).at("nowhere", "person-" + ++this.people);
		households.join(households.shareCode(dog.household().id(), "test"), chat.id(), "Carer" + this.people);
		return chat;
	}

	private void say(ConfigurableApplicationContext instance, Chat chat, String text) {
		instance.getBean(Inbox.class).receive(chat, UUID.randomUUID().toString(), "Carer", text);
	}

	private void awaitHandled() {
		Awaitility.await().atMost(Duration.ofSeconds(60)).until(() -> first(Inbox.class).depth() == 0);
		assertThat(count("inbox_message where state = 'failed'")).isZero();
	}

	private int count(String what) {
		return first(JdbcClient.class).sql("select count(*) from " + what).query(Integer.class).single();
	}

	@Test
	void everyMessageIsAnsweredOnceAndEachChatInOrder() throws Exception {
		Dog dog = enrolled("Sorrel").dog();
		List<Chat> chats = List.of(joined(dog), joined(dog), joined(dog));
		onBoth((number, instance) -> chats.forEach((chat) -> {
			for (int round = 0; round < ROUNDS; round++) {
				say(instance, chat, "/today");
			}
		}));
		awaitHandled();
		for (Chat chat : chats) {
			assertThat(first(Inbox.class).of(chat.id())).hasSize(2 * ROUNDS);
			assertThat(first(Outbox.class).of(chat.id()).stream().map(OutboxEntry::message).toList())
				.hasSize(4 * ROUNDS);
		}
	}

	@Test
	void aDogThatTwoPeopleTellOfAtTheSameMomentKeepsWhatBothSaid() throws Exception {
		for (int round = 0; round < ROUNDS; round++) {
			Dog dog = enrolled("Bramble").dog();
			List<Chat> chats = List.of(joined(dog), joined(dog));
			int minutes = 10 + round;
			onBoth((number, instance) -> say(instance, chats.get(number),
					(minutes + 20 * number) + " minutes, person " + number + " saw no signs"));
			awaitHandled();
			List<WalkEntry> walks = first(Journal.class).walks(dog.id());
			List<String> said = walks.stream()
				.flatMap((walk) -> walk.said().stream())
				.map((each) -> each.text())
				.toList();
			assertThat(said).filteredOn((text) -> text.contains("person 0")).hasSize(1);
			assertThat(said).filteredOn((text) -> text.contains("person 1")).hasSize(1);
		}
	}

	@Test
	void twoWhoExpectTheSameOccasionsAtOnceBothCommit() throws Exception {
		for (int round = 0; round < ROUNDS; round++) {
			Dog dog = enrolled("Moss").dog();
			onBoth((number, instance) -> instance.getBean(TransactionTemplate.class).executeWithoutResult((status) -> {
				instance.getBean(Prompts.class).expect(dog);
				instance.getBean(Households.class).shareCode(dog.household().id(), "both");
			}));
			assertThat(count("join_code where made_by = 'both' and household_id = '" + dog.household().id() + "'"))
				.isEqualTo(2);
			assertThat(count(
					"scheduled_tasks where task_name = 'morning-check-in' and task_instance like '" + dog.id() + "%'"))
				.isEqualTo(1);
		}
	}

	@Test
	void whatFallsDueIsAskedOnce() {
		LocalDateTime now = LocalDateTime.now(ZoneOffset.UTC);
		String today = ":" + now.toLocalDate();
		for (int number = 0; number < ROUNDS; number++) {
			Dog dog = enrolled("Tarn", ZoneOffset.UTC).dog();
			joined(dog);
			first(JdbcClient.class).sql("update household set morning_at = ? where id = ?")
				.params(now.toLocalTime(), dog.household().id())
				.update();
			first(JdbcClient.class).sql("""
					insert into scheduled_tasks (task_name, task_instance, execution_time, picked, version)
					values ('morning-check-in', ?, current_timestamp, false, 1)""").param(dog.id() + today).update();
		}
		String left = "scheduled_tasks where task_name = 'morning-check-in' and task_instance like '%" + today + "'";
		Awaitility.await().atMost(Duration.ofSeconds(60)).until(() -> count(left) == 0);
		String tarns = "(select id from dog where name = 'Tarn')";
		assertThat(count("check_in where script_id = 'next-morning' and dog_id in " + tarns)).isEqualTo(ROUNDS);
		assertThat(count("outbox_message where text like '%Tarn get up today%'")).isEqualTo(ROUNDS);
	}

	@Test
	void theClinicsPagesAreServedByBoth() {
		Dog dog = enrolled("Hazel").dog();
		say(this.instances.get(0), joined(dog), "25 minutes, limped badly on the front right");
		awaitHandled();
		for (ConfigurableApplicationContext instance : this.instances) {
			Caller caller = new Caller(
					Integer.parseInt(instance.getEnvironment().getRequiredProperty("local.server.port")));
			caller.login("clinic", "a-password-for-tests");
			assertThat(PAGES).allSatisfy((page) -> assertThat(caller.get(page).statusCode()).isEqualTo(200));
			assertThat(caller.get("/clinic/dogs/" + dog.id()).body()).contains("Hazel", "limped badly");
		}
	}

}
