package measuredwalk.clinic.access;

import java.net.http.HttpResponse;
import java.util.Map;

import measuredwalk.clinic.Caller;
import measuredwalk.clinic.RunningClinic;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

import static org.assertj.core.api.Assertions.assertThat;

@RunningClinic
class ClinicLoginTests {

	@LocalServerPort
	private int port;

	@Autowired
	private StaffAccounts accounts;

	@Autowired
	private AccessRecord record;

	private Caller caller;

	@BeforeEach
	void call() {
		this.caller = new Caller(this.port);
		this.accounts.make("nettle", "a long password", StaffRole.NURSE);
		this.accounts.make("fern", "a long password", StaffRole.VET);
	}

	@ParameterizedTest
	@ValueSource(strings = { "/clinic", "/clinic/dogs", "/clinic/dogs/new", "/clinic/people", "/clinic/settings",
			"/clinic/record", "/clinic/alerts", "/clinic/dogs/8b1d63f4-0000-4000-8000-000000000000" })
	void nobodySeesAPageWithoutLoggingIn(String path) {
		HttpResponse<String> answer = this.caller.get(path);
		assertThat(answer.statusCode()).isEqualTo(302);
		assertThat(Caller.location(answer)).isEqualTo("/clinic/login");
	}

	@Test
	void staffLogInByOurOwnForm() {
		assertThat(Caller.location(this.caller.login("clinic", "rehearsal"))).isEqualTo("/clinic");
		assertThat(this.caller.get("/clinic").body()).contains("Dogs to look at", "clinic, administrator");
	}

	@Test
	void aNewSessionBeginsAtLogin() {
		this.caller.get("/clinic/login");
		HttpResponse<String> answer = this.caller.login("clinic", "rehearsal");
		assertThat(answer.headers().allValues("Set-Cookie")).anyMatch((cookie) -> cookie.startsWith("JSESSIONID="));
	}

	@Test
	void aFormWithoutItsTokenIsRefused() {
		this.caller.login("clinic", "rehearsal");
		assertThat(this.caller.postWithoutToken("/clinic/alert-codes", "").statusCode()).isEqualTo(403);
	}

	@Test
	void aPartOfAPageThatAsksByItselfIsSentToTheFormAsAWhole() {
		HttpResponse<String> answer = this.caller.get("/clinic/alerts", "HX-Request", "true");
		assertThat(answer.statusCode()).isEqualTo(401);
		assertThat(answer.headers().firstValue("HX-Redirect")).contains("/clinic/login");
	}

	@Test
	void afterFiveWrongPasswordsEvenTheRightOneWaits() {
		this.accounts.make("sedge", "a long password", StaffRole.NURSE);
		for (int i = 0; i < 5; i++) {
			this.caller.login("sedge", "wrong " + i);
		}
		HttpResponse<String> answer = this.caller.login("sedge", "a long password");
		assertThat(answer.headers().firstValue("Location").orElse("")).endsWith("problem=pause");
		HttpResponse<String> overApi = this.caller.api("GET", "/api/dogs", "sedge:a long password", "");
		assertThat(overApi.statusCode()).isEqualTo(429);
		assertThat(overApi.headers().firstValue("Retry-After")).isPresent();
	}

	@Test
	void aNurseMayNeitherChangeSettingsNorManageAccountsNorErase() {
		this.caller.login("nettle", "a long password");
		assertThat(this.caller.get("/clinic/settings").statusCode()).isEqualTo(403);
		assertThat(this.caller.get("/clinic/record").statusCode()).isEqualTo(403);
		assertThat(this.caller.post("/clinic/people", "/clinic/accounts", Map.of("username", "moss")).statusCode())
			.isEqualTo(403);
		assertThat(this.caller
			.api("DELETE", "/api/dogs/8b1d63f4-0000-4000-8000-000000000000", "nettle:a long password", "")
			.statusCode()).isEqualTo(403);
	}

	@Test
	void aVetMayNotManageAccounts() {
		this.caller.login("fern", "a long password");
		assertThat(this.caller.get("/clinic/record").statusCode()).isEqualTo(403);
		assertThat(this.caller.get("/clinic/people").body()).doesNotContain("Staff accounts");
	}

	@Test
	void anAccountThatIsSwitchedOffMayNotLogIn() {
		this.accounts.make("reed", "a long password", StaffRole.VET);
		this.accounts.setActive("reed", false);
		assertThat(this.caller.login("reed", "a long password").headers().firstValue("Location").orElse(""))
			.endsWith("problem=wrong");
	}

	@Test
	void itIsRecordedWhoSawThePeople() {
		this.caller.login("fern", "a long password");
		this.caller.get("/clinic/people");
		assertThat(this.record.newest("", 5))
			.anyMatch((line) -> line.staff().equals("fern") && line.what().equals("saw people and codes"));
	}

	@Test
	void logsOut() {
		this.caller.login("fern", "a long password");
		this.caller.post("/clinic", "/clinic/logout", Map.of());
		assertThat(this.caller.get("/clinic").statusCode()).isEqualTo(302);
	}

}
