package measuredwalk.telegram;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;

import com.fasterxml.jackson.databind.JsonNode;

/**
 * Owners write to the whole application through the stand-in of the Bot API, and it is
 * measured how many messages it handles in a second. Settings, as system properties:
 * {@code load.database} (h2 or postgres), {@code load.chats} (each writes
 * {@link LoadTalk} once), {@code load.per-second} (how many messages come in a second; 0:
 * all at once), {@code load.sent-per-second} (what the application may send; the public
 * limit is 30), {@code load.history} (days that each dog's journal holds already) and
 * {@code load.flags} (of the application's virtual machine, with blanks between).
 */
final class ChatLoad {

	private static final int WARM_UP_CHATS = Integer.getInteger("load.warm-up-chats", 300);

	private static final int FIRST_CHAT = 10_000;

	private static final Duration QUIET = Duration.ofSeconds(3);

	private final int chats = Integer.getInteger("load.chats", 1000);

	private final int perSecond = Integer.getInteger("load.per-second", 0);

	private final int historyDays = Integer.getInteger("load.history", 0);

	private final Path folder;

	private final LoadDatabase database;

	private final BotApiStandIn api = new BotApiStandIn();

	private final StandInPeople people = new StandInPeople(this.api.updates(), 1);

	private final RunningApplication application;

	private final List<AnswerTimes.Asked> asked = new ArrayList<>();

	private ChatLoad(Path folder) throws IOException {
		this.folder = folder;
		this.database = LoadDatabase.named(System.getProperty("load.database", "h2"), folder);
		List<String> flags = List.of(System.getProperty("load.flags", "-Xmx512m").split(" "));
		List<String> settings = new ArrayList<>(this.database.settings());
		settings
			.add("--measuredwalk.telegram.messages-per-second=" + System.getProperty("load.sent-per-second", "10000"));
		settings.add("--measuredwalk.telegram.chat-pause=" + System.getProperty("load.chat-pause", "0ms"));
		ShippedJar jar = ShippedJar.in(folder);
		this.application = new RunningApplication(folder, this.api, () -> jar.command(flags), settings);
	}

	/** Runs once and prints what was measured. */
	static void measureOnce() throws IOException, InterruptedException, SQLException {
		Path folder = Files.createTempDirectory("chat-load");
		ChatLoad load = new ChatLoad(folder);
		try {
			load.run();
		}
		finally {
			load.application.kill();
			load.api.close();
			load.database.close();
		}
	}

	private void run() throws IOException, InterruptedException, SQLException {
		start();
		int all = WARM_UP_CHATS + this.chats;
		for (int chat = 0; chat < all; chat++) {
			JsonNode dog = this.application.post("/api/dogs",
					"{\"name\":\"Dog%d\",\"timeZone\":\"Europe/London\",\"planMinutes\":20}".formatted(chat));
			this.people.say(FIRST_CHAT + chat, "/start " + dog.path("joinCode").asText());
		}
		awaitQuiet();
		if (this.historyDays > 0) {
			this.application.stop();
			new LoadHistory(this.historyDays).write(this.database);
			start();
		}
		talk(FIRST_CHAT, WARM_UP_CHATS);
		awaitQuiet();
		measure();
	}

	private void start() throws IOException {
		this.application.start();
		this.application.awaitReady();
	}

	private void measure() throws InterruptedException, SQLException {
		int sentBefore = this.api.sentCount();
		Duration processorBefore = this.application.processorTime();
		Duration serverBefore = this.database.serverTime();
		this.asked.clear();
		Instant begun = Instant.now();
		talk(FIRST_CHAT + WARM_UP_CHATS, this.chats);
		awaitQuiet();
		Duration processor = this.application.processorTime().minus(processorBefore);
		Duration server = this.database.serverTime().minus(serverBefore);
		double load = ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage();
		this.application.stop();
		List<Instant> handled = handled(begun);
		int turns = handled.size();
		System.out.printf(Locale.ROOT, "%s, %d days of journal, %s; load average %.1f; left in %s%n",
				this.database.name(), this.historyDays,
				(this.perSecond > 0) ? this.perSecond + " messages a second" : "all messages at once", load,
				this.folder);
		System.out.printf(Locale.ROOT,
				"%d turns handled (%d updates), %d messages sent%n%.1f turns a second over all, %.1f in the middle four fifths%n",
				turns, this.asked.size(), this.api.sentCount() - sentBefore, rate(handled, 0, turns - 1),
				rate(handled, turns / 10, turns - 1 - turns / 10));
		System.out.printf(Locale.ROOT, "processor time a turn: application %.2f ms, database server %.2f ms%n",
				processor.toNanos() / 1e6 / turns, server.toNanos() / 1e6 / turns);
		System.out.println(new AnswerTimes(this.asked, this.api.sent()).words());
	}

	private static double rate(List<Instant> handled, int first, int last) {
		return (last - first) / (Duration.between(handled.get(first), handled.get(last)).toNanos() / 1e9);
	}

	/** Each chat in turn says one thing, then each the next. */
	private void talk(int firstChat, int number) throws InterruptedException {
		long begun = System.nanoTime();
		int count = 0;
		for (int said = 0; said < LoadTalk.length(); said++) {
			for (int chat = firstChat; chat < firstChat + number; chat++) {
				if (this.perSecond > 0) {
					long due = begun + count++ * (TimeUnit.SECONDS.toNanos(1) / this.perSecond);
					TimeUnit.NANOSECONDS.sleep(due - System.nanoTime());
				}
				this.asked.add(new AnswerTimes.Asked(chat, System.nanoTime()));
				this.people.say(chat, LoadTalk.text(chat, said));
			}
		}
	}

	/** Waits until all is fetched and nothing more is sent. */
	private void awaitQuiet() throws InterruptedException {
		int sent = -1;
		while (this.api.updates().unconfirmed() > 0 || sent != this.api.sentCount()) {
			sent = this.api.sentCount();
			TimeUnit.NANOSECONDS.sleep(QUIET.toNanos());
		}
	}

	private List<Instant> handled(Instant since) throws SQLException {
		List<Instant> handled = new ArrayList<>();
		try (Connection connection = this.database.open(); Statement statement = connection.createStatement()) {
			ResultSet rows = statement
				.executeQuery("select handled_at from inbox_message where state = 'handled' order by handled_at");
			while (rows.next()) {
				handled.add(rows.getObject(1, OffsetDateTime.class).toInstant());
			}
		}
		return handled.stream().filter((at) -> !at.isBefore(since)).toList();
	}

}
