package measuredwalk.clinic;

import java.time.Clock;
import java.time.ZoneId;
import java.util.List;
import java.util.concurrent.TimeUnit;

import measuredwalk.MeasuredWalk;
import measuredwalk.clinic.caseload.Caseload;
import measuredwalk.escalation.AlertLevel;
import measuredwalk.escalation.Alerts;
import measuredwalk.escalation.Evidence;
import measuredwalk.household.Dog;
import measuredwalk.household.Households;
import measuredwalk.household.NewDog;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.springframework.boot.SpringApplication;
import org.springframework.context.ConfigurableApplicationContext;

/**
 * The first page of a clinic with 2,000 dogs and 40 open alerts, asked for over HTTP from
 * the whole application on H2 in memory; and the part of it that asks again every five
 * seconds.
 */
@State(Scope.Thread)
public class TodayPageBenchmark {

	private static final int DOGS = 2000;

	private static final int ALERTS = 40;

	private ConfigurableApplicationContext application;

	private Caller caller;

	@Setup(Level.Trial)
	public void start() {
		this.application = SpringApplication.run(MeasuredWalk.class, "--server.port=0", "--measuredwalk.rehearsal=true",
				"--spring.datasource.url=jdbc:h2:mem:benchmark;MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;"
						+ "DEFAULT_NULL_ORDERING=HIGH;DB_CLOSE_DELAY=-1");
		for (int number = 0; number < DOGS; number++) {
			Dog dog = enrolled(number);
			this.application.getBean(Caseload.class).lookAt(dog.id());
			if (number < ALERTS) {
				this.application.getBean(Alerts.class)
					.raise(dog.id(), AlertLevel.REVIEW, "Signs piling up",
							new Evidence("stiff again today", this.application.getBean(Clock.class).instant(), "Wren"));
			}
		}
		this.caller = new Caller(
				Integer.parseInt(this.application.getEnvironment().getRequiredProperty("local.server.port")));
		this.caller.login("clinic", "rehearsal");
	}

	private Dog enrolled(int number) {
		return this.application.getBean(Households.class)
			.enrol(new NewDog("Dog " + number, 20.0, 9.0, true, null, ZoneId.of("Europe/London"), 16, 2, null, null,
					List.of(), List.of("nsaid")), "benchmark")
			.dog();
	}

	@TearDown(Level.Trial)
	public void stop() {
		this.application.close();
	}

	@Benchmark
	@BenchmarkMode(Mode.AverageTime)
	@OutputTimeUnit(TimeUnit.MILLISECONDS)
	public String page() {
		return ok(this.caller.get("/clinic"));
	}

	@Benchmark
	@BenchmarkMode(Mode.AverageTime)
	@OutputTimeUnit(TimeUnit.MILLISECONDS)
	public String alertsAgain() {
		return ok(this.caller.get("/clinic/alerts?seen="));
	}

	private static String ok(java.net.http.HttpResponse<String> answer) {
		if (answer.statusCode() != 200) {
			throw new IllegalStateException("The page answered " + answer.statusCode());
		}
		return answer.body();
	}

}
