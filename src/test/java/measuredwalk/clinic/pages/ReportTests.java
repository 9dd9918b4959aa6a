package measuredwalk.clinic.pages;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;

import javax.imageio.ImageIO;

import com.sun.net.httpserver.HttpServer;
import measuredwalk.clinic.Caller;
import measuredwalk.clinic.KnownPatient;
import measuredwalk.clinic.RunningClinic;
import measuredwalk.escalation.Alert;
import measuredwalk.escalation.AlertLevel;
import measuredwalk.escalation.Alerts;
import measuredwalk.escalation.Evidence;
import measuredwalk.files.PaperSize;
import measuredwalk.files.PdfLayout;
import measuredwalk.household.Dog;
import measuredwalk.household.DogChange;
import measuredwalk.household.Households;
import measuredwalk.pictures.Picture;
import measuredwalk.pictures.TimelinePicture;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

@RunningClinic
class ReportTests {

	@LocalServerPort
	private int port;

	@Autowired
	private KnownPatient patient;

	@Autowired
	private Alerts alerts;

	@Autowired
	private Households households;

	@Autowired
	private Reports reports;

	@Autowired
	private ReportPdf pdf;

	/** As much as a report can hold: all lists are longer than it shows. */
	private Dog busyDog() {
		Dog dog = this.patient.knownFor(49);
		for (int i = 0; i < 6; i++) {
			Alert alert = this.alerts.raise(dog.id(), AlertLevel.REVIEW,
					"Signs piling up: the daily burden has been above this dog's own usual for longer than chance explains",
					new Evidence("very stiff today", dog.enrolledAt(), "Wren"));
			this.alerts.close(alert.id(), "nettle",
					"seen at the clinic " + i + ", plan cut by a fifth, again in a week");
			this.households.change(dog.id(), new DogChange(16.0 + i, null, null, null,
					List.of("nsaid", "kind-" + i, "anti-ngf", "gabapentinoid")), "nettle");
		}
		return this.households.dog(dog.id()).orElseThrow();
	}

	@ParameterizedTest
	@EnumSource(PaperSize.class)
	void aFullReportIsOnePageOfItsPaperAndSaysWhatItShould(PaperSize paper) throws IOException {
		byte[] file = this.pdf.of(this.reports.of(busyDog(), 7), paper);
		try (PDDocument document = Loader.loadPDF(file)) {
			keepAsPicture(document, paper);
			assertThat(document.getNumberOfPages()).isEqualTo(1);
			assertThat(document.getPage(0).getMediaBox().getWidth()).isCloseTo(paper.widthMillimetres() * 72 / 25.4f,
					within(0.5f));
			String text = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
			assertThat(text).contains("Re-check report: Sorrel", "30 kg, 10 years", "2 walks of 21 min",
					"80 % interval", "of 49 mornings", "slowing 8, stiffness 8", "Worse mornings", "35, longest 35",
					"nsaid: given when taken on;", "gabapentinoid: from", "plan 2 walks of 20 min",
					"seen by nettle after 0 min", "seen at the clinic 5", "and 3 earlier",
					"stiff for half an hour, could hardly get off her bed", "Chosen by rule", "No trial has tested",
					"Signs expected by the model on");
		}
	}

	private static void keepAsPicture(PDDocument document, PaperSize paper) throws IOException {
		BufferedImage image = new PDFRenderer(document).renderImageWithDPI(0, 100);
		Path folder = Files.createDirectories(Path.of("target", "pictures"));
		ImageIO.write(image, "png", folder.resolve("report-" + paper + ".png").toFile());
	}

	@Test
	void theGravestDayOfEachWeekIsQuotedAndNoOther() {
		Report report = this.reports.of(this.patient.knownFor(28), 4).report();
		assertThat(report.words()).hasSize(4)
			.allSatisfy((said) -> assertThat(said.text()).startsWith("stiff for half an hour"));
	}

	@Test
	void aDogOfWhichNothingIsKnownHasAReportToo() throws IOException {
		Dog dog = this.patient.knownFor(0);
		try (PDDocument document = Loader.loadPDF(this.pdf.of(this.reports.of(dog, 6), PaperSize.A4))) {
			assertThat(document.getNumberOfPages()).isEqualTo(1);
			assertThat(new PDFTextStripper().getText(document)).contains("No signs were told of",
					"Only 0 walks are known");
		}
	}

	@Test
	void nothingIsFetchedForThePdf() throws IOException {
		AtomicInteger asked = new AtomicInteger();
		HttpServer server = HttpServer.create(new java.net.InetSocketAddress("127.0.0.1", 0), 0);
		server.createContext("/", (exchange) -> {
			asked.incrementAndGet();
			exchange.sendResponseHeaders(404, -1);
		});
		server.start();
		try {
			String place = "http://127.0.0.1:" + server.getAddress().getPort();
			Picture picture = TimelinePicture.of("Sorrel", new ArrayList<>(), 720);
			byte[] file = PdfLayout.laidOut(
					"<html lang='en'><head><title>t</title><meta name='description' content='d'/><link rel='stylesheet' href='"
							+ place + "/a.css'/></head><body style='font-family: Liberation Sans'><img alt='x' src='"
							+ place + "/a.png'/><img alt='x' src='file:///etc/hostname'/>words</body></html>",
					picture, PaperSize.A4);
			assertThat(file).startsWith("%PDF".getBytes(java.nio.charset.StandardCharsets.US_ASCII));
			assertThat(asked).hasValue(0);
		}
		finally {
			server.stop(0);
		}
	}

	@Test
	void thePageShowsTheSameReportAndLinksToBothPapers() {
		Dog dog = this.patient.knownFor(14);
		Caller caller = new Caller(this.port);
		caller.login("clinic", "rehearsal");
		String path = "/clinic/dogs/" + dog.id() + "/report";
		assertThat(caller.get(path).body()).contains("Re-check report: Sorrel", "role=\"img\"", "paper=A4",
				"paper=LETTER");
		assertThat(caller.get(path + ".pdf?paper=LETTER").headers().firstValue("Content-Type"))
			.hasValue("application/pdf");
		assertThat(caller.get(path + "?weeks=999").statusCode()).isEqualTo(200);
	}

}
