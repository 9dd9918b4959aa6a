package measuredwalk.telegram;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;

/**
 * The morning check-in of many dogs is due in the same minute, while owners write. It is
 * measured at the stand-in of the Bot API how many messages come in any second, and how
 * long owners wait for an answer. Settings, as system properties: {@code load.database}
 * (postgres or h2), {@code burst.dogs}, {@code burst.answers-per-second} and
 * {@code load.flags}.
 */
final class MorningBurst {

	private static final Duration UNTIL_DUE = Duration.ofSeconds(40);

	private static final double SECOND = 1e9;

	private final int dogs = Integer.getInteger("burst.dogs", 10_000);

	private final int answersPerSecond = Integer.getInteger("burst.answers-per-second", 4);

	private final LoadDatabase database;

	private final BotApiStandIn api = new BotApiStandIn();

	private final StandInPeople people = new StandInPeople(this.api.updates(), 1);

	private final RunningApplication application;

	private MorningBurst(Path folder) throws IOException {
		this.database = LoadDatabase.named(System.getProperty("load.database", "postgres"), folder);
		List<String> flags = List.of(System.getProperty("load.flags", "-Xmx512m").split(" "));
		ShippedJar jar = ShippedJar.in(folder);
		this.application = new RunningApplication(folder, this.api, () -> jar.command(flags), this.database.settings());
	}

	/** Runs once and prints what was measured. */
	static void measureOnce() throws IOException, InterruptedException, SQLException {
		MorningBurst burst = new MorningBurst(Files.createTempDirectory("morning-burst"));
		try {
			burst.run();
		}
		finally {
			burst.application.kill();
			burst.api.close();
			burst.database.close();
		}
	}

	private void run() throws IOException, InterruptedException, SQLException {
		this.application.start();
		this.application.awaitReady();
		this.application.stop();
		new BurstHouseholds(this.dogs, Instant.now().plus(UNTIL_DUE)).write(this.database);
		this.application.start();
		this.application.awaitReady();
		print(answerWhileAsked());
	}

	/**
	 * Owners write while the others are being asked, the last ones first, so that most of
	 * them have not been asked yet.
	 */
	private List<AnswerTimes.Asked> answerWhileAsked() throws InterruptedException {
		List<AnswerTimes.Asked> asked = new ArrayList<>();
		long longest = System.nanoTime() + TimeUnit.SECONDS.toNanos(this.dogs / 10 + 180);
		while (this.api.chatsSentTo() < this.dogs && System.nanoTime() < longest) {
			TimeUnit.NANOSECONDS.sleep(TimeUnit.SECONDS.toNanos(1) / this.answersPerSecond);
			if (this.api.sentCount() > 0) {
				long chat = BurstHouseholds.FIRST_CHAT + this.dogs - 1 - asked.size();
				asked.add(new AnswerTimes.Asked(chat, System.nanoTime()));
				this.people.say(chat, "20 minutes round the field, no signs at all");
			}
		}
		return asked;
	}

	private void print(List<AnswerTimes.Asked> asked) {
		List<StandInMessage> sent = this.api.sent();
		long[] at = sent.stream().mapToLong(StandInMessage::nanos).sorted().toArray();
		int most = 0;
		int first = 0;
		for (int last = 0; last < at.length; last++) {
			while (at[last] - at[first] >= SECOND) {
				first++;
			}
			most = Math.max(most, last - first + 1);
		}
		int tenth = at.length / 10;
		double steady = (at.length - 2 * tenth - 1) / ((at[at.length - 1 - tenth] - at[tenth]) / SECOND);
		System.out.printf(Locale.ROOT, "%s, %d dogs due at once, %d messages sent in %.1f s%n", this.database.name(),
				this.dogs, at.length, (at[at.length - 1] - at[0]) / SECOND);
		System.out.printf(Locale.ROOT, "at most %d in any second, %.2f a second in the middle four fifths%n", most,
				steady);
		List<StandInMessage> answers = sent.stream().filter((each) -> !each.text().startsWith("Good morning")).toList();
		System.out.println("owners who wrote meanwhile: " + new AnswerTimes(asked, answers).words());
		System.out.println("the later half of them: "
				+ new AnswerTimes(asked.subList(asked.size() / 2, asked.size()), answers).words());
	}

}
