package measuredwalk.clinic;

import java.io.IOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Calls the running application as a browser without script does, or as a program. */
public final class Caller {

	private static final JsonMapper JSON = JsonMapper.builder().build();

	private static final Pattern TOKEN = Pattern.compile("name=\"_csrf\" value=\"([^\"]+)\"");

	private final HttpClient client = HttpClient.newBuilder().cookieHandler(new CookieManager()).build();

	private final String base;

	public Caller(int port) {
		this.base = "http://localhost:" + port;
	}

	public HttpResponse<String> get(String path, String... headers) {
		return send(request(path, headers).GET().build());
	}

	/** Posts a form with the token of the page that it stands on. */
	public HttpResponse<String> post(String page, String path, Map<String, String> fields) {
		String body = encoded(fields) + "&_csrf=" + encoded(token(get(page).body()));
		return postWithoutToken(path, body);
	}

	public HttpResponse<String> postWithoutToken(String path, String body) {
		return send(request(path, "Content-Type", "application/x-www-form-urlencoded")
			.POST(HttpRequest.BodyPublishers.ofString(body))
			.build());
	}

	public HttpResponse<String> login(String name, String password) {
		return post("/clinic/login", "/clinic/login", Map.of("username", name, "password", password));
	}

	/** Calls the API; the body is JSON with single quotes, or empty. */
	public HttpResponse<String> api(String method, String path, String account, String body, String... headers) {
		HttpRequest.BodyPublisher publisher = body.isEmpty() ? HttpRequest.BodyPublishers.noBody()
				: HttpRequest.BodyPublishers.ofString(body.replace('\'', '"'));
		HttpRequest.Builder request = request(path, headers).method(method, publisher);
		request.header("Content-Type", "application/json");
		if (!account.isEmpty()) {
			request.header("Authorization",
					"Basic " + Base64.getEncoder().encodeToString(account.getBytes(StandardCharsets.UTF_8)));
		}
		return send(request.build());
	}

	public static JsonNode json(HttpResponse<String> response) {
		return JSON.readTree(response.body());
	}

	public static String location(HttpResponse<String> response) {
		return URI.create(response.headers().firstValue("Location").orElse("")).getPath();
	}

	private HttpRequest.Builder request(String path, String... headers) {
		HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(this.base + path));
		return (headers.length > 0) ? request.headers(headers) : request;
	}

	private HttpResponse<String> send(HttpRequest request) {
		try {
			return this.client.send(request, HttpResponse.BodyHandlers.ofString());
		}
		catch (IOException ex) {
			throw new IllegalStateException(request.uri() + " does not answer", ex);
		}
		catch (InterruptedException ex) {
			Thread.currentThread().interrupt();
			throw new IllegalStateException(ex);
		}
	}

	private static String token(String page) {
		Matcher matcher = TOKEN.matcher(page);
		return matcher.find() ? matcher.group(1) : "";
	}

	private static String encoded(Map<String, String> fields) {
		return fields.entrySet()
			.stream()
			.map((field) -> field.getKey() + "=" + encoded(field.getValue()))
			.collect(Collectors.joining("&"));
	}

	private static String encoded(String text) {
		return URLEncoder.encode(text, StandardCharsets.UTF_8);
	}

}
