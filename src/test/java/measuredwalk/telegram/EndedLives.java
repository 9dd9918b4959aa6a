package measuredwalk.telegram;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;

import com.fasterxml.jackson.databind.JsonNode;
import org.awaitility.Awaitility;

import static org.assertj.core.api.Assertions.assertThat;

/** One application that is ended again and again while people write. */
final class EndedLives {

	/** New people who write in each life of the process. */
	private static final int PEOPLE = 5;

	private static final int FIRST_CHAT = 4000;

	private final Ending ending;

	private final int ends;

	private final Random random;

	private final Map<Integer, String> dogs = new LinkedHashMap<>();

	EndedLives(Ending ending, int ends, long seed) {
		this.ending = ending;
		this.ends = ends;
		this.random = new Random(seed);
	}

	/** Lives all lives, and checks what they left behind. */
	void live(Path folder, ShippedJar jar) throws IOException, InterruptedException, SQLException {
		RunningApplication application = null;
		try (BotApiStandIn api = new BotApiStandIn()) {
			application = new RunningApplication(folder, api, jar);
			story(api, application);
		}
		finally {
			if (application != null) {
				application.kill();
			}
		}
	}

	private void story(BotApiStandIn api, RunningApplication application)
			throws IOException, InterruptedException, SQLException {
		StandInPeople people = new StandInPeople(api.updates(), 1);
		begin(api, application);
		application.awaitReady();
		takeDogsOn(application);
		for (int end = 0; end < this.ends; end++) {
			endAfter(1 + this.random.nextInt(5 * PEOPLE), api, application);
			write(people, end);
			assertThat(application.awaitDeath()).as("exit status").isEqualTo(this.ending.exitStatus());
			begin(api, application);
		}
		write(people, this.ends);
		Awaitility.await()
			.atMost(Duration.ofSeconds(120))
			.untilAsserted(() -> assertThat(this.dogs.keySet()).allMatch((chat) -> answered(api, chat)));
		assertJournal(application);
		application.stop();
		assertSent(api, application);
		application.assertLog(List.of("no signs", "turn for home"));
	}

	/** The answer to the last thing that each person asks. */
	private static boolean answered(BotApiStandIn api, int chat) {
		return api.updates().unconfirmed() == 0
				&& api.textsTo(chat).stream().anyMatch((text) -> text.contains("turn for home"));
	}

	/**
	 * A new life begins when no message of the life before it is being taken. One may
	 * still lie in the connection: which life a message came from is told by its sender.
	 */
	private void begin(BotApiStandIn api, RunningApplication application) throws IOException {
		Awaitility.await().until(() -> api.sendingNow() == 0);
		application.start();
	}

	/** Ends the process in the middle of a request, when it has made some of them. */
	private void endAfter(int requests, BotApiStandIn api, RunningApplication application) {
		AtomicInteger left = new AtomicInteger(requests);
		api.watch((method) -> {
			boolean counts = method.equals("sendmessage") || method.equals("getupdates");
			if (counts && left.decrementAndGet() == 0) {
				this.ending.bring(application);
			}
		});
	}

	private void takeDogsOn(RunningApplication application) throws IOException, InterruptedException {
		for (int number = 0; number < PEOPLE * (this.ends + 1); number++) {
			JsonNode dog = application.post("/api/dogs",
					"{\"name\":\"Dog%d\",\"timeZone\":\"Europe/London\",\"planMinutes\":20}".formatted(number));
			this.dogs.put(FIRST_CHAT + number, dog.path("id").asText() + " " + dog.path("joinCode").asText());
		}
	}

	private void write(StandInPeople people, int life) {
		for (int each = 0; each < PEOPLE; each++) {
			int chat = FIRST_CHAT + life * PEOPLE + each;
			people.say(chat, "/start " + this.dogs.get(chat).split(" ")[1]);
			people.say(chat, minutes(chat) + " minutes, no signs");
			people.say(chat, "/today");
		}
	}

	private static int minutes(int chat) {
		return 5 + chat % 30;
	}

	private void assertJournal(RunningApplication application) throws IOException, InterruptedException {
		for (int chat : this.dogs.keySet()) {
			JsonNode journal = application.get("/api/dogs/" + this.dogs.get(chat).split(" ")[0] + "/journal");
			assertThat(journal.path("walks")).hasSize(1);
			assertThat(journal.path("walks").get(0).path("minutes").asDouble()).isEqualTo(minutes(chat));
		}
	}

	private void assertSent(BotApiStandIn api, RunningApplication application) throws SQLException {
		Map<Integer, List<String>> written = new LinkedHashMap<>();
		try (Connection database = DriverManager.getConnection(application.databaseUrl(), "sa", "");
				Statement statement = database.createStatement()) {
			assertThat(count(statement, "inbox_message where state = 'handled' and attempts = 1"))
				.isEqualTo(3 * this.dogs.size());
			assertThat(count(statement, "outbox_message where state <> 'sent'")).isZero();
			ResultSet rows = statement.executeQuery(
					"select c.address, o.text from outbox_message o join chat c on c.id = o.chat_id order by o.id");
			while (rows.next()) {
				written.computeIfAbsent(rows.getInt(1), (chat) -> new ArrayList<>()).add(rows.getString(2));
			}
		}
		int repeats = 0;
		for (int chat : this.dogs.keySet()) {
			repeats += repeats(api, chat, written.get(chat));
		}
		assertThat(repeats).isLessThanOrEqualTo(this.ends * this.ending.mostRepeats());
	}

	private static int count(Statement statement, String what) throws SQLException {
		try (ResultSet row = statement.executeQuery("select count(*) from " + what)) {
			row.next();
			return row.getInt(1);
		}
	}

	/**
	 * The lives that sent a text. One text may be written twice, one after the other, so
	 * which of its copies is the repeated one cannot be told; but it takes two lives.
	 */
	private static Set<String> lives(List<StandInMessage> got, int last) {
		Set<String> lives = new HashSet<>();
		for (int index = last; index >= 0 && got.get(index).text().equals(got.get(last).text()); index--) {
			lives.add(got.get(index).sender());
		}
		return lives;
	}

	/**
	 * Compares what a chat got with what was written to it: the same in the same order,
	 * but for a message that came once more in the next life.
	 */
	private int repeats(BotApiStandIn api, int chat, List<String> written) {
		List<StandInMessage> got = api.sent().stream().filter((each) -> each.chatId() == chat).toList();
		int next = 0;
		int repeats = 0;
		for (int index = 0; index < got.size(); index++) {
			String text = got.get(index).text();
			if (next < written.size() && text.equals(written.get(next))) {
				next++;
			}
			else {
				assertThat(text).as("out of order").isEqualTo(got.get(index - 1).text());
				assertThat(lives(got, index)).as("lives that sent '" + text + "'").hasSizeGreaterThan(1);
				repeats++;
			}
		}
		assertThat(next).as("all that was written to " + chat).isEqualTo(written.size());
		return repeats;
	}

}
