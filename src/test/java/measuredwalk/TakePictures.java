package measuredwalk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.function.BooleanSupplier;

import measuredwalk.tolerance.simulation.ToleranceTrajectories;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.Dimension;
import org.openqa.selenium.Keys;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.support.ui.WebDriverWait;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.context.SpringBootTest.WebEnvironment;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;
import tools.jackson.databind.json.JsonMapper;

/**
 * Takes every picture of the documentation from the running program, with the invented
 * dog of the rehearsal: {@code mvn -Ppictures test}. It is no test, and needs Chromium
 * with its driver.
 */
@SpringBootTest(webEnvironment = WebEnvironment.RANDOM_PORT, properties = "measuredwalk.rehearsal=true")
class TakePictures {

	private static final Path FOLDER = Path.of("docs/pictures");

	private static final int PHONE = 390;

	/** Higher than any phone, so that a whole exchange is to be seen. */
	private static final int HIGH_PHONE = 1290;

	private static final int DESK = 1100;

	private static final int HIGHEST = 1500;

	/** Three weeks and a half; the report looks back on four. */
	private static final int DAYS = 26;

	@LocalServerPort
	private int port;

	private ChromeDriver browser;

	private ChatVisitor wren;

	@DynamicPropertySource
	static void database(DynamicPropertyRegistry registry) {
		Databases.h2(registry);
	}

	@BeforeEach
	void open() throws IOException {
		Files.createDirectories(FOLDER);
		ChromeOptions options = new ChromeOptions();
		options.setBinary("/usr/bin/chromium");
		options.addArguments("--headless=new", "--no-sandbox", "--disable-gpu", "--disable-dev-shm-usage",
				"--hide-scrollbars");
		this.browser = new ChromeDriver(
				new ChromeDriverService.Builder().usingDriverExecutable(Path.of("/usr/bin/chromedriver").toFile())
					.build(),
				options);
		this.wren = new ChatVisitor(this.port, "wren");
	}

	@AfterEach
	void close() {
		this.browser.quit();
	}

	@Test
	void takeAllPictures() throws IOException {
		chat();
		for (int day = 1; day < DAYS; day++) {
			live(day);
		}
		logIn();
		String dog = "/clinic/dogs/"
				+ JsonMapper.shared().readTree(this.wren.get("/api/dogs")).get(0).get("id").asString();
		takeWhole("clinic-dog", dog);
		takeWhole("clinic-report", dog + "/report");
		emergency();
		takeWhole("clinic-today", "/clinic");
		ToleranceTrajectories.main(new String[] { FOLDER.toString() });
	}

	/** The first evening and morning, as somebody sees them who tries the program out. */
	private void chat() throws IOException {
		size(PHONE, HIGH_PHONE);
		go("/");
		move("to-evening");
		write("we did 25 minutes round the field, she slowed up after about 15 and was a bit stiff on the back left");
		write("same as usual");
		take("chat");
		move("to-morning");
		write("a bit stiff, it took 10 minutes");
		write("no, nothing");
		take("chat-morning");
	}

	/** Most days are good; every sixth walk is a little long. */
	private void live(int day) {
		this.wren.moveOn("evening");
		boolean tooMuch = day % 6 == 5;
		this.wren.say(tooMuch ? "24 minutes to the river and back, she slowed up after 16"
				: 16 + day % 4 + " minutes in the park, fine all the way");
		if (tooMuch) {
			this.wren.say("a bit tired");
		}
		this.wren.moveOn("morning");
		this.wren.say(tooMuch ? "stiff this morning, 15 minutes to walk it off, no other signs" : "same as usual");
	}

	private void emergency() throws IOException {
		size(PHONE, HIGH_PHONE);
		go("/");
		write("she just collapsed in the garden and her gums look white");
		take("chat-emergency");
	}

	private void logIn() {
		go("/clinic/login");
		this.browser.findElement(By.id("username")).sendKeys("clinic");
		this.browser.findElement(By.id("password")).sendKeys("rehearsal", Keys.ENTER);
		waitUntil(() -> this.browser.getCurrentUrl().endsWith("/clinic"));
	}

	private void size(int wide, int high) {
		this.browser.manage().window().setSize(new Dimension(wide, high));
	}

	private void go(String path) {
		this.browser.get("http://127.0.0.1:" + this.port + path);
	}

	private int bubbles() {
		return this.browser.findElements(By.cssSelector("ol[role=log] li")).size();
	}

	private void write(String text) {
		int before = bubbles();
		this.browser.findElement(By.id("text")).sendKeys(text, Keys.ENTER);
		waitUntil(() -> bubbles() > before + 1);
	}

	private void move(String to) {
		String before = this.browser.findElement(By.id("now")).getText();
		this.browser.findElement(By.id(to)).sendKeys(Keys.ENTER);
		waitUntil(() -> !this.browser.findElement(By.id("now")).getText().equals(before));
	}

	private void waitUntil(BooleanSupplier done) {
		new WebDriverWait(this.browser, Duration.ofSeconds(30))
			.ignoreAll(List.of(org.openqa.selenium.StaleElementReferenceException.class))
			.until((page) -> done.getAsBoolean());
	}

	private void take(String name) throws IOException {
		Files.write(FOLDER.resolve(name + ".png"), this.browser.getScreenshotAs(OutputType.BYTES));
	}

	/** As much of the page as a reader of the documentation wants to see. */
	private void takeWhole(String name, String path) throws IOException {
		size(DESK, 900);
		go(path);
		Number high = (Number) this.browser.executeScript("return document.documentElement.scrollHeight");
		size(DESK, Math.min(HIGHEST, high.intValue() + 140));
		waitUntil(() -> Boolean.TRUE.equals(this.browser
			.executeScript("return [...document.images].every((each) => each.complete && each.naturalWidth > 0)")));
		take(name);
	}

}
