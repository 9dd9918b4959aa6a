package measuredwalk.clinic;

import java.net.http.HttpResponse;

import measuredwalk.ChatVisitor;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.jdbc.core.simple.JdbcClient;

import static org.assertj.core.api.Assertions.assertThat;

/** What a monitoring system gets to see of the running program. */
@RunningClinic
class MetersTests {

	private static final String ADMIN = "clinic:rehearsal";

	@LocalServerPort
	private int port;

	@Autowired
	private JdbcClient database;

	private Caller caller;

	@BeforeEach
	void call() {
		this.caller = new Caller(this.port);
	}

	@ParameterizedTest
	@ValueSource(strings = { "measuredwalk_inbox_messages{state=\"waiting\"}",
			"measuredwalk_inbox_longest_wait_seconds", "measuredwalk_outbox_messages{state=\"dead\"}",
			"measuredwalk_outbox_longest_wait_seconds", "measuredwalk_alerts_open{level=\"emergency\"}",
			"measuredwalk_alerts_oldest_seconds{level=\"same-day\"}", "measuredwalk_schedule_lag_seconds",
			"measuredwalk_inbox_messages_ever_total", "measuredwalk_outbox_messages_ever_total",
			"jvm_memory_used_bytes", "http_server_requests_seconds" })
	void meterIsThere(String meter) {
		this.caller.get("/actuator/health");
		assertThat(meters()).contains("\n" + meter);
	}

	@Test
	void anAlertThatNobodyHasAcknowledgedIsCounted() {
		double before = value("measuredwalk_alerts_open{level=\"emergency\"}");
		new ChatVisitor(this.port, "wren").say("she collapsed and her gums are white");
		assertThat(value("measuredwalk_alerts_open{level=\"emergency\"}")).isEqualTo(before + 1);
	}

	@Test
	void aMessageInWhichNothingWasUnderstoodIsCountedWithoutItsWords() {
		double read = value("measuredwalk_reading_messages_total");
		double missed = value("measuredwalk_reading_misses_total");
		new ChatVisitor(this.port, "wren").say("zzz flibber the quonk");
		assertThat(value("measuredwalk_reading_messages_total")).isEqualTo(read + 1);
		assertThat(value("measuredwalk_reading_misses_total")).isEqualTo(missed + 1);
		assertThat(meters()).doesNotContain("flibber");
	}

	@Test
	void aQuestionOfWhatWasMeantIsCounted() {
		double before = value("measuredwalk_reading_ask_backs_total{about=\"amount\"}");
		ChatVisitor alder = new ChatVisitor(this.port, "alder");
		alder.say("/walk");
		alder.say("240 minutes");
		assertThat(value("measuredwalk_reading_ask_backs_total{about=\"amount\"}")).isEqualTo(before + 1);
	}

	@Test
	void anyLagOfTheScheduleIsSeen() {
		this.database.sql("""
				insert into scheduled_tasks (task_name, task_instance, execution_time, picked, version)
				values ('of-no-program', 'x', timestamp with time zone '2020-01-01 00:00:00Z', false, 1)""").update();
		assertThat(value("measuredwalk_schedule_lag_seconds")).isGreaterThan(1e8);
		this.database.sql("delete from scheduled_tasks where task_name = 'of-no-program'").update();
	}

	@ParameterizedTest
	@ValueSource(strings = { "", "clinic:wrong" })
	void nobodyElseSeesThem(String account) {
		assertThat(this.caller.api("GET", "/actuator/prometheus", account, "").statusCode()).isEqualTo(401);
	}

	@Test
	void ownersWordsAreInNone() {
		new ChatVisitor(this.port, "wren").say("12 minutes past the windmill");
		assertThat(meters()).doesNotContain("windmill", "Thistle", "wren");
	}

	private double value(String meter) {
		return meters().lines()
			.filter((line) -> line.startsWith(meter + " "))
			.mapToDouble((line) -> Double.parseDouble(line.substring(line.lastIndexOf(' '))))
			.findFirst()
			.orElseThrow();
	}

	private String meters() {
		HttpResponse<String> answer = this.caller.api("GET", "/actuator/prometheus", ADMIN, "");
		assertThat(answer.statusCode()).isEqualTo(200);
		return "\n" + answer.body();
	}

}
