package measuredwalk.records;

import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.UUID;

import measuredwalk.ChatVisitor;
import measuredwalk.clinic.Caller;
import measuredwalk.clinic.RunningClinic;
import measuredwalk.household.Dog;
import measuredwalk.household.Households;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import tools.jackson.databind.JsonNode;

import static org.assertj.core.api.Assertions.assertThat;

/** What owners can take along, from the chat and from the clinic's page. */
@RunningClinic
class RecordsTests {

	private static final String STAFF = "clinic:rehearsal";

	@LocalServerPort
	private int port;

	@Autowired
	private Households households;

	@Autowired
	private Records records;

	private ChatVisitor wren;

	private Dog dog;

	@BeforeEach
	void aDogWithAWalk() {
		this.wren = new ChatVisitor(this.port, "wren");
		Caller caller = new Caller(this.port);
		JsonNode enrolled = Caller.json(caller.api("POST", "/api/dogs", STAFF,
				"{'name':'Séan Dàr','timeZone':'Europe/London','planMinutes':20,'medications':['nsaid']}"));
		this.wren.say("/start " + enrolled.get("joinCode").asString());
		this.dog = this.households.dog(UUID.fromString(enrolled.get("id").asString())).orElseThrow();
		this.wren.say("=20 minutes, he was a bit stiff; \"slow\" <b>too</b>");
	}

	private List<CSVRecord> rows() throws IOException {
		String table = new String(this.records.of(this.dog, Records.Form.CSV).content(), StandardCharsets.UTF_8);
		assertThat(table).startsWith("\ufeff");
		return CSVFormat.RFC4180.builder()
			.setHeader()
			.setSkipHeaderRecord(true)
			.build()
			.parse(new StringReader(table.substring(1)))
			.getRecords();
	}

	@Test
	void theTableHoldsWalksWithTheOwnersWordsAndWhatWasSuggested() throws IOException {
		CSVRecord walk = rows().stream().filter((row) -> row.get("about").equals("walk")).findFirst().orElseThrow();
		assertThat(walk.get("minutes")).isEqualTo("20");
		assertThat(walk.get("signs")).contains("a bit stiff");
		assertThat(walk.get("told_by")).isEqualTo("Wren");
		assertThat(rows()).extracting((row) -> row.get("about")).contains("suggestion", "medicine given already");
	}

	@Test
	void wordsThatASpreadsheetWouldTakeForAFormulaAreText() throws IOException {
		assertThat(rows()).extracting((row) -> row.get("own_words"))
			.contains("'=20 minutes, he was a bit stiff; \"slow\" <b>too</b>");
	}

	@Test
	void thePagesHoldTheOwnersWordsThePictureInWordsAndTheCautions() throws IOException {
		byte[] pdf = this.records.of(this.dog, Records.Form.PDF).content();
		Files.write(Files.createDirectories(Path.of("target", "pictures")).resolve("owner-record.pdf"), pdf);
		try (PDDocument document = Loader.loadPDF(pdf)) {
			assertThat(document.getDocumentCatalog().getLanguage()).isEqualTo("en");
			assertThat(new PDFTextStripper().getText(document).replaceAll("\\s+", " ")).contains("Séan Dàr's walks",
					"he was a bit stiff; \"slow\" <b>too</b>” Wren", "walks told of on 1 of 1 days",
					"Medicine: anti-inflammatory.", "Nobody measured it", "call your clinic");
		}
	}

	@Test
	void theRecordIsInTheHouseholdsLanguage() throws IOException {
		new Caller(this.port).api("PATCH", "/api/dogs/" + this.dog.id(), STAFF, "{'language':'es'}");
		Dog spanish = this.households.dog(this.dog.id()).orElseThrow();
		String table = new String(this.records.of(spanish, Records.Form.CSV).content(), StandardCharsets.UTF_8);
		assertThat(table).contains("\"tus_palabras\"", "\"paseo\"", "\"propuesta\"").doesNotContain("own_words");
		try (PDDocument document = Loader.loadPDF(this.records.of(spanish, Records.Form.PDF).content())) {
			assertThat(document.getDocumentCatalog().getLanguage()).isEqualTo("es");
			assertThat(new PDFTextStripper().getText(document).replaceAll("\\s+", " ")).contains(
					"Los paseos de Séan Dàr", "El plan de la clínica ahora: 2 paseos de 20 minutos al día",
					"paseos contados en 1 de 1 días", "Nadie lo midió", "antiinflamatorio");
		}
	}

	@Test
	void theFileIsCalledByLettersThatEveryMachineKnows() {
		assertThat(this.records.of(this.dog, Records.Form.PDF).fileName())
			.matches("[a-z0-9-]+-walks-\\d{4}-\\d\\d-\\d\\d\\.pdf");
	}

	@Test
	void inTheChatItIsALinkForThatPersonAlone() {
		this.wren.say("/export csv");
		String page = this.wren.rawPage();
		String link = page.substring(page.lastIndexOf("/chat/file/")).replaceAll("(?s)\".*", "").replace("&amp;", "&");
		assertThat(this.wren.get(link)).contains("own_words");
		assertThat(this.wren.send("GET", link.replace("as=wren", "as=newcomer"), "").statusCode()).isEqualTo(404);
	}

	@Test
	void theClinicHandsOutTheSameAfterALoginAndItIsOnRecord() {
		Caller caller = new Caller(this.port);
		String place = "/clinic/dogs/" + this.dog.id() + "/owner-record.";
		assertThat(caller.get(place + "csv").body()).doesNotContain("own_words");
		caller.login("clinic", "rehearsal");
		assertThat(caller.get("/clinic/dogs/" + this.dog.id()).body()).contains(place + "pdf", place + "csv");
		assertThat(caller.get(place + "csv").body()).contains("own_words");
		assertThat(caller.get(place + "pdf").headers().firstValue("Content-Type")).contains("application/pdf");
		assertThat(caller.get("/clinic/record").body()).contains("took along a dog&#39;s record for its owner");
	}

}
