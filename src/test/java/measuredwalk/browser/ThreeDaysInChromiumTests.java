package measuredwalk.browser;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;

import measuredwalk.Databases;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.Dimension;
import org.openqa.selenium.JavascriptExecutor;
import org.openqa.selenium.Keys;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.support.ui.WebDriverWait;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.context.SpringBootTest.WebEnvironment;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.annotation.DirtiesContext;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

/**
 * Plays three days in a real Chromium, at phone width and by keyboard. Where there is no
 * browser it is skipped and says so; under {@code CI=true} there must be one.
 */
@SpringBootTest(webEnvironment = WebEnvironment.RANDOM_PORT, properties = "measuredwalk.rehearsal=true")
@DirtiesContext
class ThreeDaysInChromiumTests {

	private static final Dimension PHONE = new Dimension(390, 844);

	@LocalServerPort
	private int port;

	private ChromeDriver browser;

	@DynamicPropertySource
	static void database(DynamicPropertyRegistry registry) {
		Databases.h2(registry);
	}

	@BeforeEach
	void openBrowser() {
		Path chromium = Path.of("/usr/bin/chromium");
		Path driver = Path.of("/usr/bin/chromedriver");
		boolean there = Stream.of(chromium, driver).allMatch(Files::isExecutable);
		if (!"true".equals(System.getenv("CI"))) {
			assumeTrue(there, "No Chromium with its driver on this machine: the browser test is skipped.");
		}
		ChromeOptions options = new ChromeOptions();
		options.setBinary(chromium.toFile());
		options.addArguments("--headless=new", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run",
				"--disable-background-networking", "--disable-component-update", "--disable-sync",
				"--disable-dev-shm-usage");
		this.browser = new ChromeDriver(
				new ChromeDriverService.Builder().usingDriverExecutable(driver.toFile()).build(), options);
		this.browser.manage().window().setSize(PHONE);
	}

	@AfterEach
	void closeBrowser() {
		if (this.browser != null) {
			this.browser.quit();
		}
	}

	/** Read in one go: the page may change the log at any moment. */
	private List<String> bubbles() {
		Object texts = this.browser
			.executeScript("return [...document.querySelectorAll('ol[role=log] li p')].map((each) => each.innerText)");
		return ((List<?>) texts).stream().map(String::valueOf).toList();
	}

	private String clock() {
		return String.valueOf(this.browser.executeScript("return document.getElementById('now').innerText"));
	}

	private void waitUntil(BooleanSupplier done) {
		new WebDriverWait(this.browser, Duration.ofSeconds(30)).until((page) -> done.getAsBoolean());
	}

	/** Types into the writing line, which has the focus, and sends with Enter. */
	private void write(String text) {
		int before = bubbles().size();
		this.browser.findElement(By.id("text")).sendKeys(text, Keys.ENTER);
		awaitMore(before + 1);
	}

	private void moveOn(String to, String shown) {
		this.browser.findElement(By.id(to)).sendKeys(Keys.ENTER);
		waitUntil(() -> clock().endsWith(shown));
	}

	private void toEvening() {
		moveOn("to-evening", "20:00");
	}

	private void toMorning() {
		moveOn("to-morning", "07:31");
	}

	private void awaitMore(int count) {
		waitUntil(() -> bubbles().size() > count);
	}

	private boolean anyWider() {
		return (Boolean) this.browser
			.executeScript("return document.documentElement.scrollWidth > document.documentElement.clientWidth");
	}

	@Test
	void threeDaysInThreeMinutesByKeyboardOnAPhone() throws Exception {
		this.browser.get("http://127.0.0.1:" + this.port + "/");
		assertThat(bubbles()).anyMatch((line) -> line.contains("I am a support for your clinic"));
		toEvening();
		write("we did 25 minutes round the field, she slowed up after about 15 and was a bit stiff on the back left");
		assertThat(bubbles()).anyMatch((line) -> line.startsWith("Written down: 25 minutes today"));
		write("same as usual");
		toMorning();
		assertThat(bubbles()).anyMatch((line) -> line.startsWith("Good morning. How did Thistle get up today"));
		this.browser.findElement(By.xpath("//form[@class='choices']//button[.='A bit stiff']")).sendKeys(Keys.ENTER);
		waitUntil(() -> bubbles().stream().anyMatch((line) -> line.startsWith("How many minutes did it take")));
		write("10 minutes");
		write("no, nothing");
		assertThat(bubbles()).anyMatch((line) -> line.startsWith("Today: "));
		toEvening();
		write("14 minutes, fine all the way");
		toMorning();
		write("same as usual");
		write("/log");
		assertThat(bubbles().get(bubbles().size() - 2)).contains("25 minutes on").contains("14 minutes yesterday");
		assertThat(bubbles().get(bubbles().size() - 1)).startsWith("Thistle's fortnight: walks on 2 of 4 days");
		waitUntil(this::theLastPictureIsDrawn);
		waitUntil(this::theEndIsInSight);
		assertThat(anyWider()).as("the page scrolls sideways on a phone").isFalse();
		Files.createDirectories(Path.of("target/pictures"));
		Files.write(Path.of("target/pictures/chat-phone.png"), this.browser.getScreenshotAs(OutputType.BYTES));
	}

	private boolean theLastPictureIsDrawn() {
		return Boolean.TRUE.equals(((JavascriptExecutor) this.browser)
			.executeScript("const all = document.querySelectorAll('li img'); const last = all[all.length - 1];"
					+ "return last.complete && last.naturalWidth > 0 && last.alt.startsWith('Thistle, ');"));
	}

	private boolean theEndIsInSight() {
		return Boolean.TRUE.equals(((JavascriptExecutor) this.browser)
			.executeScript("return window.scrollY + window.innerHeight >= document.body.scrollHeight - 2;"));
	}

	@Test
	void aScreenReaderFindsNamesRolesAndALiveLog() {
		this.browser.get("http://127.0.0.1:" + this.port + "/");
		assertThat(this.browser.findElements(By.cssSelector("ol[role=log][aria-live=polite]"))).hasSize(1);
		assertThat(this.browser.findElement(By.id("text")).getAccessibleName()).isEqualTo("Your message");
		assertThat(this.browser.findElement(By.id("send")).getAccessibleName()).isEqualTo("Send");
		assertThat(this.browser.findElements(By.tagName("h1"))).hasSize(1);
		assertThat(this.browser.findElement(By.tagName("html")).getDomAttribute("lang")).isEqualTo("en");
	}

}
