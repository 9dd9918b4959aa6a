package measuredwalk.clinic.pages;

import java.net.http.HttpResponse;
import java.util.Map;

import measuredwalk.clinic.Caller;
import measuredwalk.clinic.RunningClinic;
import measuredwalk.clinic.access.AccessRecord;
import measuredwalk.escalation.ClinicSettings;
import measuredwalk.escalation.ReviewDesign;
import measuredwalk.reading.MessageRule;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.web.util.HtmlUtils;

import static org.assertj.core.api.Assertions.assertThat;

/** The clinical rules with what they rest on, and how keen reviews are. */
@RunningClinic
class RulesPageTests {

	private static final String SETTINGS = "/clinic/settings";

	@LocalServerPort
	private int port;

	@Autowired
	private ClinicSettings settings;

	@Autowired
	private AccessRecord record;

	@Autowired
	private JdbcClient database;

	private Caller caller;

	@BeforeEach
	void login() {
		this.caller = new Caller(this.port);
		this.caller.login("clinic", "rehearsal");
	}

	@AfterEach
	void leaveTheSettingsAsTheyWere() {
		this.database.sql("delete from clinic_setting").update();
	}

	private HttpResponse<String> choose(String design) {
		return this.caller.post(SETTINGS, SETTINGS, Map.of("setting", "REVIEW_DESIGN", "text", design));
	}

	@Test
	void everyRuleStandsThereWithItsGradeItsSourceAndItsDates() {
		String page = HtmlUtils.htmlUnescape(this.caller.get("/clinic/rules").body());
		for (MessageRule rule : MessageRule.all()) {
			assertThat(page).contains(rule.reason(), rule.basis().source());
		}
		assertThat(page).contains("Flare not settling", "Thomas 2021", "Grade H, borrowed from people",
				"Unseen emergency", "told again after 15 minutes", "Rest after a bad morning",
				"Checked 25 Nov 2026, valid until 25 Nov 2028.");
	}

	@Test
	void theNumbersOfTheDosingRuleShowWhenTheyWereChecked() {
		assertThat(this.caller.get(SETTINGS).body()).contains("Checked 25 Nov 2026, valid until 25 Nov 2028.");
	}

	@Test
	void theClinicChoosesHowKeenReviewsAreAndItIsRecorded() {
		assertThat(this.settings.reviewDesign()).isEqualTo(ReviewDesign.BALANCED);
		assertThat(this.caller.get(SETTINGS).body()).contains("0.8 false reviews a dog in 180 days",
				"In-control run length of the chart of signs: 1080 days", "value=\"balanced\" checked=\"checked\"");
		choose("keener");
		assertThat(this.settings.reviewDesign()).isEqualTo(ReviewDesign.KEENER);
		assertThat(this.record.newest("", 1)).singleElement()
			.satisfies((line) -> assertThat(line.about()).endsWith("balanced to keener"));
		this.caller.post(SETTINGS, SETTINGS, Map.of("setting", "REVIEW_DESIGN", "text", "keener", "back", "true"));
		assertThat(this.settings.reviewDesign()).isEqualTo(ReviewDesign.BALANCED);
	}

	@Test
	void aDesignThatThereIsNotIsRefused() {
		choose("deaf");
		assertThat(this.settings.reviewDesign()).isEqualTo(ReviewDesign.BALANCED);
	}

}
