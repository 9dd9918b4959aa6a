package measuredwalk;

import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.boot.web.server.context.WebServerApplicationContext;
import org.springframework.context.ConfigurableApplicationContext;

import static org.assertj.core.api.Assertions.assertThat;

class RestartTests {

	@TempDir
	private Path folder;

	private ConfigurableApplicationContext start() {
		return new SpringApplicationBuilder(MeasuredWalk.class).run("--server.port=0",
				"--spring.datasource.url=jdbc:h2:file:" + this.folder.resolve("walk")
						+ ";MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH");
	}

	private static ChatVisitor wren(ConfigurableApplicationContext context) {
		return new ChatVisitor(((WebServerApplicationContext) context).getWebServer().getPort(), "wren");
	}

	@Test
	void aRestartInMidCheckInGoesOnWhereItWasAndTheRehearsalClockNeverRunsBack() {
		String before;
		try (ConfigurableApplicationContext first = start()) {
			ChatVisitor wren = wren(first);
			wren.moveOn("morning");
			wren.say("/walk");
			wren.say("20 minutes");
			before = wren.get("/rehearsal/clock");
		}
		try (ConfigurableApplicationContext second = start()) {
			ChatVisitor wren = wren(second);
			assertThat(wren.get("/rehearsal/clock")).isGreaterThan(before);
			List<String> answer = wren.say("no, nothing");
			assertThat(answer.get(0)).isEqualTo("And how is Thistle now, next to a usual day?");
			wren.say("better");
			assertThat(wren.say("/log").get(0)).contains("20 minutes today; better than usual.");
		}
	}

}
