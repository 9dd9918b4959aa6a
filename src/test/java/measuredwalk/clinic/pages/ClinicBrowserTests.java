package measuredwalk.clinic.pages;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.ZoneId;
import java.util.List;

import com.deque.html.axecore.selenium.AxeBuilder;
import measuredwalk.clinic.KnownPatient;
import measuredwalk.clinic.RunningClinic;
import measuredwalk.clock.Rehearsal;
import measuredwalk.escalation.AlertLevel;
import measuredwalk.escalation.AlertStatus;
import measuredwalk.escalation.Alerts;
import measuredwalk.escalation.Evidence;
import measuredwalk.household.Dog;
import measuredwalk.household.Households;
import measuredwalk.household.NewDog;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.By;
import org.openqa.selenium.Dimension;
import org.openqa.selenium.JavascriptExecutor;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.support.ui.ExpectedConditions;
import org.openqa.selenium.support.ui.WebDriverWait;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

import static org.assertj.core.api.Assertions.assertThat;

/** The clinic's pages in a real browser, wide and narrow. */
@RunningClinic
class ClinicBrowserTests {

	private static final Path CHROMIUM = Path.of("/usr/bin/chromium");

	private static final Path DRIVER = Path.of("/usr/bin/chromedriver");

	@LocalServerPort
	private int port;

	@Autowired
	private Households households;

	@Autowired
	private Alerts alerts;

	@Autowired
	private Rehearsal rehearsal;

	@Autowired
	private KnownPatient patient;

	private ChromeDriver browser;

	@BeforeEach
	void open() {
		Assumptions.assumeTrue(Files.isExecutable(CHROMIUM) && Files.isExecutable(DRIVER),
				"Skipped: the pages are tried in Debian's chromium with chromium-driver, which are not installed.");
		ChromeOptions options = new ChromeOptions();
		options.setBinary(CHROMIUM.toFile());
		options.addArguments("--headless=new", "--no-sandbox", "--disable-gpu");
		this.browser = new ChromeDriver(
				new ChromeDriverService.Builder().usingDriverExecutable(DRIVER.toFile()).build(), options);
	}

	@AfterEach
	void close() {
		if (this.browser != null) {
			this.browser.quit();
		}
	}

	private void login() {
		go("/clinic");
		this.browser.findElement(By.id("username")).sendKeys("clinic");
		this.browser.findElement(By.id("password")).sendKeys("rehearsal", Keys.ENTER);
		await().until(ExpectedConditions.titleContains("Today"));
	}

	private void go(String path) {
		this.browser.get("http://localhost:" + this.port + path);
	}

	private WebDriverWait await() {
		return new WebDriverWait(this.browser, Duration.ofSeconds(20));
	}

	private Dog sorrel() {
		return this.households
			.enrol(new NewDog("Sorrel", 30.0, 10.0, true, null, ZoneId.of("Europe/London"), 20, 2, null, null,
					List.of(), List.of()), "test")
			.dog();
	}

	@Test
	void anAlertArrivesWithoutReloadingAndIsAcknowledgedByButton() {
		login();
		((JavascriptExecutor) this.browser).executeScript("window.stillTheSamePage = true");
		var alert = this.alerts.raise(sorrel().id(), AlertLevel.EMERGENCY, "the dog collapsed",
				new Evidence("she went down on the grass <b>at once</b>", this.rehearsal.now(), "Wren"));
		WebElement shown = await().until(ExpectedConditions.visibilityOfElementLocated(By.id("alert-" + alert.id())));
		assertThat(shown.getText()).contains("Sorrel", "she went down on the grass <b>at once</b>", "Wren");
		assertThat(((JavascriptExecutor) this.browser).executeScript("return window.stillTheSamePage")).isEqualTo(true);
		shown.findElement(By.cssSelector("button[value=acknowledge]")).click();
		await().until(
				ExpectedConditions.textToBePresentInElementLocated(By.cssSelector("main > .notice"), "acknowledged"));
		assertThat(this.alerts.one(alert.id()).orElseThrow().status()).isEqualTo(AlertStatus.ACKNOWLEDGED);
	}

	@Test
	void aNewPatientIsTakenOnByKeyboardAlone() {
		login();
		go("/clinic/dogs/new");
		this.browser.switchTo()
			.activeElement()
			.sendKeys("Teasel", Keys.TAB, "8.5", Keys.TAB, "13", Keys.TAB, "12", Keys.ENTER);
		await().until(ExpectedConditions.titleContains("Code for Teasel"));
		assertThat(this.browser.findElement(By.className("code")).getText()).matches("[A-Z0-9]{5} [A-Z0-9]{5}");
	}

	@Test
	void aPlanShowsWhatItWillDoBeforeItIsSaved() {
		Dog dog = sorrel();
		login();
		go("/clinic/dogs/" + dog.id());
		WebElement minutes = this.browser.findElement(By.id("planMinutes"));
		minutes.clear();
		minutes.sendKeys("12");
		this.browser.findElement(By.cssSelector("button[formaction$=preview]")).click();
		await().until(ExpectedConditions.textToBePresentInElementLocated(By.id("preview"), "Nothing is saved yet"));
		assertThat(this.households.dog(dog.id()).orElseThrow().plan().planMinutes()).isEqualTo(20);
		this.browser.findElement(By.cssSelector(".plan button.strong")).click();
		await().until(ExpectedConditions.textToBePresentInElementLocated(By.cssSelector("main > .notice"), "saved"));
		assertThat(this.households.dog(dog.id()).orElseThrow().plan().planMinutes()).isEqualTo(12);
	}

	@ParameterizedTest
	@ValueSource(ints = { 380, 1100 })
	void noPageIsWiderThanTheScreenAndEveryFieldHasAName(int width) {
		Dog dog = sorrel();
		this.browser.manage().window().setSize(new Dimension(width, 900));
		login();
		for (String page : List.of("/clinic", "/clinic/dogs", "/clinic/dogs/new", "/clinic/people", "/clinic/settings",
				"/clinic/record", "/clinic/dogs/" + dog.id(), "/clinic/dogs/" + dog.id() + "/code")) {
			go(page);
			assertThat(this.browser.getTitle()).as(page).endsWith("- clinic");
			Object wide = ((JavascriptExecutor) this.browser)
				.executeScript("return document.documentElement.scrollWidth > document.documentElement.clientWidth");
			assertThat(wide).as(page).isEqualTo(false);
			this.browser.findElements(By.cssSelector("input:not([type=hidden]), select, button"))
				.stream()
				.filter(WebElement::isDisplayed)
				.forEach((field) -> assertThat(field.getAccessibleName()).as(page + " " + field.getTagName())
					.isNotBlank());
		}
	}

	/** Rules of WCAG 2.1 A and AA, and axe's own best practices. */
	@ParameterizedTest
	@ValueSource(ints = { 390, 1200 })
	void axeFindsNothingAgainstAnyPage(int width) throws java.io.IOException {
		Dog dog = this.patient.knownFor(35);
		var alert = this.alerts.raise(dog.id(), AlertLevel.REVIEW, "signs piling up",
				new Evidence("stiff again", this.rehearsal.now(), "Wren"));
		this.browser.manage().window().setSize(new Dimension(width, 900));
		go("/clinic/login");
		isAccessible("login " + width);
		login();
		String home = "/clinic/dogs/" + dog.id();
		for (String page : List.of("/clinic", home, home + "/report", "/clinic/dogs/new", "/clinic/people",
				"/clinic/settings", "/clinic/rules", "/clinic/record", "/clinic/audit", "/clinic/alerts/" + alert.id(),
				"/clinic/dogs")) {
			go(page);
			isAccessible(page + " " + width);
		}
	}

	private void isAccessible(String page) throws java.io.IOException {
		String name = page.replaceAll("[0-9a-f]{8}-[0-9a-f-]+", "id").replaceAll("[^a-z0-9]+", "-");
		Path pictures = Files.createDirectories(Path.of("target", "pictures"));
		Files.write(pictures.resolve("page" + name + ".png"),
				this.browser.getScreenshotAs(org.openqa.selenium.OutputType.BYTES));
		List<String> found = new AxeBuilder().analyze(this.browser)
			.getViolations()
			.stream()
			.map((rule) -> rule.getId() + ": "
					+ rule.getNodes().stream().map((node) -> String.valueOf(node.getHtml())).limit(3).toList())
			.toList();
		assertThat(found).as(page).isEmpty();
	}

}
