package measuredwalk.clinic.pages;

import java.net.http.HttpResponse;
import java.util.List;

import measuredwalk.clinic.Caller;
import measuredwalk.clinic.KnownPatient;
import measuredwalk.clinic.RunningClinic;
import measuredwalk.clinic.audit.Audits;
import measuredwalk.clinic.audit.DogAudit;
import measuredwalk.household.Dog;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.jdbc.core.simple.JdbcClient;

import static org.assertj.core.api.Assertions.assertThat;

@RunningClinic
class AuditPageTests {

	@LocalServerPort
	private int port;

	@Autowired
	private KnownPatient patient;

	@Autowired
	private Audits audits;

	@Autowired
	private JdbcClient database;

	@Test
	void thePageAndTheFileTellOfEachDogCounted() {
		Dog dog = this.patient.knownFor(14);
		this.database.sql("update dog set name = ? where id = ?").params("=HYPERLINK(\"x\")", dog.id()).update();
		this.audits.count(dog);
		assertThat(this.audits.dogs()).filteredOn((each) -> each.dogId().equals(dog.id()))
			.singleElement()
			.satisfies((each) -> {
				assertThat(List.of(each.days(), each.walks(), each.morningsAnswered(), each.morningsExpected()))
					.containsExactly(15, 24, 11, 14);
				assertThat(each).extracting(DogAudit::flares).isEqualTo(0);
			});
		Caller caller = new Caller(this.port);
		caller.login("clinic", "rehearsal");
		assertThat(caller.get("/clinic/audit").body()).contains("Dogs within their band", "Flares per 100 dog-weeks",
				"Mornings answered, median dog", "emergency", "review");
		HttpResponse<String> file = caller.get("/clinic/audit.csv");
		assertThat(file.headers().firstValue("Content-Type").orElse("")).isEqualTo("text/csv;charset=UTF-8");
		assertThat(file.headers().firstValue("Content-Disposition").orElse("")).startsWith("attachment");
		assertThat(file.body()).startsWith("\"dog\",\"id\",\"days\",\"walks\",")
			.contains("\"'=HYPERLINK(\"\"x\"\")\",\"" + dog.id() + "\",15,24,");
	}

}
