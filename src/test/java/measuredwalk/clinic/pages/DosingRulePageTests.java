package measuredwalk.clinic.pages;

import java.net.http.HttpResponse;
import java.util.Map;

import measuredwalk.clinic.Caller;
import measuredwalk.clinic.RunningClinic;
import measuredwalk.clinic.access.AccessRecord;
import measuredwalk.clinic.access.StaffRole;
import measuredwalk.suggestions.DosingRules;
import measuredwalk.tolerance.DosingSetting;
import measuredwalk.tolerance.DosingSettings;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.jdbc.core.simple.JdbcClient;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

/** The dosing rule on the settings page, as a browser without script uses it. */
@RunningClinic
class DosingRulePageTests {

	private static final String PAGE = "/clinic/settings";

	private static final String PASSWORD = "a long password";

	@LocalServerPort
	private int port;

	@Autowired
	private AccessRecord record;

	@Autowired
	private DosingRules rules;

	@Autowired
	private JdbcClient database;

	private Caller caller;

	@BeforeEach
	void login() {
		Caller administrator = new Caller(this.port);
		administrator.login("clinic", "rehearsal");
		makeAccount(administrator, "nettle", StaffRole.NURSE);
		makeAccount(administrator, "fern", StaffRole.VET);
		this.caller = new Caller(this.port);
		this.caller.login("fern", PASSWORD);
	}

	private static void makeAccount(Caller administrator, String name, StaffRole role) {
		administrator.post("/clinic/people", "/clinic/accounts",
				Map.of("username", name, "password", PASSWORD, "role", role.name()));
	}

	@AfterEach
	void leaveTheRuleAsItWas() {
		this.database.sql("delete from dosing_setting").update();
	}

	private HttpResponse<String> set(String setting, String amount) {
		return this.caller.post(PAGE, PAGE + "/dosing", Map.of("setting", setting, "amount", amount));
	}

	private String page() {
		return this.caller.get(PAGE).body();
	}

	private double minutesSuggested(String dog) {
		return Caller.json(this.caller.api("GET", "/api/dogs/" + dog + "/suggestion", "fern:" + PASSWORD, ""))
			.get("minutes")
			.asDouble();
	}

	private String newDog() {
		return Caller.json(this.caller.api("POST", "/api/dogs", "fern:" + PASSWORD,
				"{'name':'Sorrel','timeZone':'Europe/London','planMinutes':30}"))
			.get("id")
			.asString();
	}

	@Test
	void everyNumberStandsThereWithNameUnitRangeDefaultGradeAndSource() {
		String page = page();
		for (DosingSetting setting : DosingSetting.values()) {
			assertThat(page).contains("id=\"" + setting.code() + "\"");
		}
		assertThat(page).contains("Rest after a bad morning", "<span>days</span>",
				"May be a whole number from 0 to 3 days.", "Default: 2. Grade C: clinic handouts",
				"White 2020, PLoS One 15:e0231306", "May be a number from 0.1 to 0.3 (a chance).", "at their defaults");
	}

	@Test
	void whatALoadCountsForIsSetAsTheRestIs() {
		set("hills", "2");
		assertThat(page()).contains("Load factors", "Hills is saved", "Set by fern,");
		assertThat(this.record.newest("", 1)).singleElement()
			.satisfies((line) -> assertThat(line.about()).isEqualTo("hills: 1.2 to 2 (a factor)"));
		this.caller.post(PAGE, PAGE + "/dosing", Map.of("setting", "hills", "amount", "2", "back", "true"));
		assertThat(this.rules.current()).isEqualTo(DosingSettings.standard());
	}

	@Test
	void aNumberThatThereIsNotIsRefused() {
		assertThat(set("colour", "2").statusCode()).isEqualTo(404);
	}

	@Test
	void aMoreCarefulRuleMakesTheNextSuggestionShorterAndTheWayBackMakesItWhatItWas() {
		String dog = newDog();
		double before = minutesSuggested(dog);
		assertThat(set("trouble-when-new", "0.05").headers().firstValue("Location").orElse(""))
			.endsWith(PAGE + "#trouble-when-new");
		assertThat(page()).contains("is saved. It counts from the next suggestion on.", "Set by fern,",
				"Not at the default: <a href=\"#trouble-when-new\">", "<span class=\"tag\">changed</span>");
		assertThat(minutesSuggested(dog)).isLessThan(before);
		this.caller.post(PAGE, PAGE + "/dosing",
				Map.of("setting", "trouble-when-new", "amount", "0.05", "back", "true"));
		assertThat(page()).contains("is back at its default", "at their defaults")
			.doesNotContain("Set by fern", "Back to the default");
		assertThat(minutesSuggested(dog)).isEqualTo(before);
	}

	@Test
	void aLimitCountsToo() {
		String dog = newDog();
		set("floor-minutes", "15");
		set("trouble-when-new", "0.05");
		assertThat(minutesSuggested(dog)).isGreaterThanOrEqualTo(15);
	}

	@Test
	void itIsRecordedWhoChangedWhatFromWhatToWhat() {
		set("rest-days", "3");
		assertThat(this.record.newest("", 1)).singleElement().satisfies((line) -> {
			assertThat(line.staff()).isEqualTo("fern");
			assertThat(line.what()).isEqualTo("changed the dosing rule");
			assertThat(line.about()).isEqualTo("rest-days: 2 to 3 days");
		});
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', textBlock = """
			trouble       | 0.5     | write a number from 0.1 to 0.3 (a chance), not &#39;0.5&#39;
			trouble       | -0.2    | write a number from 0.1 to 0.3 (a chance)
			trouble       | NaN     | write a number from 0.1 to 0.3 (a chance)
			rest-days     | 1.5     | write a whole number from 0 to 3 days, not &#39;1.5&#39;
			rest-days     | 4       | write a whole number from 0 to 3 days
			floor-minutes | <b>five | write a number from 1 to 15 minutes, not &#39;&lt;b&gt;five&#39;
			growth        | ''      | write a number from 1 to 1.25 (a factor).
			""")
	void anAmountThatIsNotAllowedIsRefusedWithTheRangeAndKeptInTheForm(String setting, String amount, String words) {
		set(setting, amount);
		assertThat(page()).contains(words, "aria-invalid=\"true\"").doesNotContain("<b>five");
		assertThat(this.rules.current()).isEqualTo(DosingSettings.standard());
	}

	@Test
	void aDecimalCommaIsReadToo() {
		set("growth", " 1,1 ");
		assertThat(this.rules.current().value(DosingSetting.GROWTH)).isEqualTo(1.1);
	}

	@Test
	void theDefaultWrittenByHandIsNoChange() {
		set("rest-days", "3");
		set("rest-days", "2");
		assertThat(this.rules.chosen()).isEmpty();
	}

	@Test
	void aNumberSetTwiceStandsAtTheLastOne() {
		set("rest-days", "3");
		set("rest-days", "1");
		assertThat(this.rules.current().value(DosingSetting.REST_DAYS)).isEqualTo(1);
	}

	@ParameterizedTest
	@ValueSource(strings = { "rest-days,9", "colour,1" })
	void aStoredAmountThatIsNoLongerAllowedStandsAtItsDefault(String stored) {
		String[] parts = stored.split(",", -1);
		this.database
			.sql("insert into dosing_setting (code, amount, set_by, set_at) values (?, ?, 'fern', current_timestamp)")
			.params(parts[0], Double.valueOf(parts[1]))
			.update();
		assertThat(this.rules.current()).isEqualTo(DosingSettings.standard());
		assertThat(page()).contains("at their defaults");
	}

	@Test
	void theRuleItselfRefusesWhatIsOutOfRange() {
		assertThatThrownBy(() -> this.rules.set(DosingSetting.REST_DAYS, 9, "fern"))
			.isInstanceOf(IllegalArgumentException.class);
	}

	@Test
	void aNurseMayNotChangeTheRule() {
		Caller nurse = new Caller(this.port);
		nurse.login("nettle", PASSWORD);
		assertThat(nurse.post("/clinic/people", PAGE + "/dosing", Map.of("setting", "rest-days", "amount", "0"))
			.statusCode()).isEqualTo(403);
		assertThat(this.rules.chosen()).isEmpty();
	}

}
