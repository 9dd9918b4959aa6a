package measuredwalk;

import java.io.IOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

import org.springframework.web.util.HtmlUtils;
import tools.jackson.databind.json.JsonMapper;

import static org.assertj.core.api.Assertions.assertThat;

/** A person at the chat page, and a clinic's system at the API, over real HTTP. */
public class ChatVisitor {

	private static final Pattern LINE = Pattern.compile("<li class=\"(mine|theirs)\">.*?<p>(.*?)</p>", Pattern.DOTALL);

	private static final Pattern TOKEN = Pattern.compile("name=\"_csrf\"[^>]*value=\"([^\"]+)\"");

	private static final Pattern CHOICE = Pattern.compile("<button name=\"text\"[^>]*>(.*?)</button>");

	private static final String STAFF = "Basic "
			+ Base64.getEncoder().encodeToString("clinic:rehearsal".getBytes(StandardCharsets.UTF_8));

	private final HttpClient client = HttpClient.newBuilder()
		.cookieHandler(new CookieManager())
		.followRedirects(HttpClient.Redirect.NORMAL)
		.build();

	private final String base;

	private final String person;

	private String page = "";

	public ChatVisitor(int port, String person) {
		this.base = "http://127.0.0.1:" + port;
		this.person = person;
	}

	/** Opens the page and gives all that stands in the chat. */
	public List<String> look() {
		this.page = send(request("/?as=" + this.person).GET().build());
		return lines(false);
	}

	/** Writes a message and gives what the bot answered to it. */
	public List<String> say(String text) {
		return act("/chat/message", Map.of("text", text));
	}

	/**
	 * Moves the rehearsal clock by the page's own button and gives what came meanwhile.
	 */
	public List<String> moveOn(String to) {
		return act("/chat/clock", Map.of("to", to));
	}

	/** The time of the rehearsal clock. */
	public Instant clock() {
		return Instant.parse(JsonMapper.shared().readTree(get("/rehearsal/clock")).get("now").asString());
	}

	/** Moves the rehearsal clock to a time and gives what came meanwhile. */
	public List<String> moveTo(ZonedDateTime to) {
		int before = look().size();
		assertThat(send("POST", "/rehearsal/clock", "{\"now\":\"" + to.toInstant() + "\"}").statusCode())
			.isEqualTo(200);
		List<String> lines = look();
		return lines.subList(before, lines.size());
	}

	public List<String> choices() {
		Matcher matcher = CHOICE.matcher(this.page);
		List<String> choices = new ArrayList<>();
		while (matcher.find()) {
			choices.add(HtmlUtils.htmlUnescape(matcher.group(1)));
		}
		return choices;
	}

	public String rawPage() {
		return this.page;
	}

	public String get(String path) {
		return send(request(path).header("Authorization", STAFF).GET().build());
	}

	public HttpResponse<String> send(String method, String path, String json) {
		return exchange(request(path).header("Authorization", STAFF)
			.header("Content-Type", "application/json")
			.method(method, BodyPublishers.ofString(json))
			.build());
	}

	private List<String> act(String path, Map<String, String> fields) {
		int before = look().size();
		Matcher token = TOKEN.matcher(this.page);
		String form = token.find() ? "_csrf=" + encode(token.group(1)) : "";
		form += "&as=" + this.person
				+ fields.entrySet()
					.stream()
					.map((field) -> "&" + field.getKey() + "=" + encode(field.getValue()))
					.collect(Collectors.joining());
		this.page = send(request(path).header("Content-Type", "application/x-www-form-urlencoded")
			.POST(BodyPublishers.ofString(form))
			.build());
		List<String> all = lines(true);
		List<String> fresh = all.subList(before, all.size());
		return fresh.stream().filter((line) -> line.startsWith("<")).map((line) -> line.substring(1)).toList();
	}

	/** Lines of the page; marked, those of the bot begin with a {@code <}. */
	private List<String> lines(boolean marked) {
		Matcher matcher = LINE.matcher(this.page);
		List<String> lines = new ArrayList<>();
		while (matcher.find()) {
			String mark = marked ? (matcher.group(1).equals("theirs") ? "<" : ">") : "";
			lines.add(mark + HtmlUtils.htmlUnescape(matcher.group(2)));
		}
		return lines;
	}

	private HttpRequest.Builder request(String path) {
		return HttpRequest.newBuilder(URI.create(this.base + path));
	}

	private String send(HttpRequest request) {
		HttpResponse<String> response = exchange(request);
		if (response.statusCode() >= 400) {
			throw new IllegalStateException(
					request.uri() + " answered " + response.statusCode() + ": " + response.body());
		}
		return response.body();
	}

	private HttpResponse<String> exchange(HttpRequest request) {
		try {
			return this.client.send(request, BodyHandlers.ofString());
		}
		catch (IOException ex) {
			throw new IllegalStateException(ex);
		}
		catch (InterruptedException ex) {
			Thread.currentThread().interrupt();
			throw new IllegalStateException(ex);
		}
	}

	private static String encode(String text) {
		return URLEncoder.encode(text, StandardCharsets.UTF_8);
	}

}
