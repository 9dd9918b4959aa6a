package measuredwalk.telegram;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;

import javax.imageio.ImageIO;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;

/**
 * Stands in for the Bot API on this machine. What it promises is taken from the public
 * documentation of the Bot API and its FAQ, nothing from this application.
 */
final class BotApiStandIn implements AutoCloseable {

	static final String TOKEN = "7700:a-token-for-tests";

	static final long BOT_ID = 7700;

	static final String BOT_NAME = "MeasuredWalkTestBot";

	private static final Set<String> SENDING = Set.of("sendmessage", "sendphoto", "senddocument");

	private final ObjectMapper mapper = new ObjectMapper();

	private final HttpServer server;

	private final ExecutorService threads = Executors.newCachedThreadPool();

	private final StandInUpdates updates = new StandInUpdates();

	private final List<StandInMessage> sent = new ArrayList<>();

	private final Map<String, Integer> calls = new ConcurrentHashMap<>();

	private final Map<String, Deque<Fault>> faults = new HashMap<>();

	private final Set<Long> blocked = ConcurrentHashMap.newKeySet();

	private final Set<Long> withoutFiles = ConcurrentHashMap.newKeySet();

	private final AtomicInteger sendingNow = new AtomicInteger();

	private final AtomicInteger messageIds = new AtomicInteger(1000);

	private final Map<Long, Long> moved = new ConcurrentHashMap<>();

	private final List<String> commands = new CopyOnWriteArrayList<>();

	private final Map<String, String> descriptions = new ConcurrentHashMap<>();

	private volatile String webhook = "";

	private volatile boolean tokenRevoked;

	private volatile Consumer<String> watcher = (method) -> {
	};

	BotApiStandIn() {
		try {
			this.server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 100);
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
		this.server.createContext("/", this::serve);
		this.server.setExecutor(this.threads);
		this.server.start();
	}

	/**
	 * Where it answers. Any path may be put behind, by which messages of several senders
	 * can be told apart.
	 */
	String url() {
		return "http://127.0.0.1:" + this.server.getAddress().getPort();
	}

	StandInUpdates updates() {
		return this.updates;
	}

	/** The next requests for updates go wrong, one after the other. */
	void failFetching(Fault... next) {
		fail("getupdates", next);
	}

	/** The next messages to a chat go wrong, texts or photos, one after the other. */
	void failSending(long chatId, Fault... next) {
		fail("send " + chatId, next);
	}

	/** A group's rules forbid photos and files. */
	void forbidFiles(long chatId) {
		this.withoutFiles.add(chatId);
	}

	private void fail(String request, Fault... next) {
		synchronized (this.faults) {
			this.faults.computeIfAbsent(request, (name) -> new ArrayDeque<>()).addAll(List.of(next));
		}
	}

	void block(long chatId) {
		this.blocked.add(chatId);
	}

	/** A group has become a supergroup and takes no more messages at its old address. */
	void move(long from, long to) {
		this.moved.put(from, to);
	}

	void unblock(long chatId) {
		this.blocked.remove(chatId);
	}

	void revokeToken(boolean revoked) {
		this.tokenRevoked = revoked;
	}

	/** Called with the method's name when a request has come, before it is answered. */
	void watch(Consumer<String> onCall) {
		this.watcher = onCall;
	}

	List<StandInMessage> sent() {
		synchronized (this.sent) {
			return List.copyOf(this.sent);
		}
	}

	int sentCount() {
		synchronized (this.sent) {
			return this.sent.size();
		}
	}

	/** How many chats got a message so far. */
	int chatsSentTo() {
		synchronized (this.sent) {
			return (int) this.sent.stream().mapToLong(StandInMessage::chatId).distinct().count();
		}
	}

	List<String> textsTo(long chatId) {
		return sent().stream().filter((each) -> each.chatId() == chatId).map(StandInMessage::text).toList();
	}

	StandInMessage lastTo(long chatId) {
		List<StandInMessage> to = sent().stream().filter((each) -> each.chatId() == chatId).toList();
		return to.get(to.size() - 1);
	}

	int calls(String method) {
		return this.calls.getOrDefault(method.toLowerCase(Locale.ROOT), 0);
	}

	/** How many messages are being taken at this moment. */
	int sendingNow() {
		return this.sendingNow.get();
	}

	List<String> commands() {
		return List.copyOf(this.commands);
	}

	/** What is shown beside a command in a language, or null. */
	String described(String language, String command) {
		return this.descriptions.get(language + "/" + command);
	}

	private void takeCommands(JsonNode call) {
		String language = call.path("language_code").asText("");
		if (language.isEmpty()) {
			this.commands.clear();
		}
		call.path("commands").forEach((each) -> {
			String command = each.path("command").asText();
			this.descriptions.put(language + "/" + command, each.path("description").asText());
			if (language.isEmpty()) {
				this.commands.add(command);
			}
		});
	}

	String webhook() {
		return this.webhook;
	}

	private void serve(HttpExchange exchange) throws IOException {
		String[] path = exchange.getRequestURI().getPath().split("/");
		String type = String.valueOf(exchange.getRequestHeaders().getFirst("Content-Type"));
		byte[] body = exchange.getRequestBody().readAllBytes();
		String method = path[path.length - 1].toLowerCase(Locale.ROOT);
		boolean sending = SENDING.contains(method);
		this.sendingNow.addAndGet(sending ? 1 : 0);
		try (exchange) {
			this.watcher.accept(method);
			this.calls.merge(method, 1, Integer::sum);
			if (this.tokenRevoked || path.length < 3 || !path[path.length - 2].equals("bot" + TOKEN)) {
				answer(exchange, 401, error(401, "Unauthorized"));
				return;
			}
			StandInRequest request = StandInRequest.of(type, body);
			go(exchange, method, request, fault(sending ? "send " + request.chatId() : method));
		}
		catch (InterruptedException ex) {
			Thread.currentThread().interrupt();
		}
		finally {
			this.sendingNow.addAndGet(sending ? -1 : 0);
		}
	}

	private Fault fault(String request) {
		synchronized (this.faults) {
			return this.faults.getOrDefault(request, new ArrayDeque<>()).poll();
		}
	}

	private void go(HttpExchange exchange, String method, StandInRequest request, Fault fault)
			throws IOException, InterruptedException {
		if (fault == null) {
			ObjectNode result = result(exchange, method, request);
			answer(exchange, result.path("error_code").asInt(200), result);
			return;
		}
		switch (fault) {
			case FLOOD -> {
				ObjectNode flood = error(429, "Too Many Requests: retry after 1");
				flood.putObject("parameters").put("retry_after", 1);
				answer(exchange, 429, flood);
			}
			case FORBIDDEN -> answer(exchange, 403, error(403, "Forbidden: bot was blocked by the user"));
			case SERVER_ERROR -> answer(exchange, 500, error(500, "Internal Server Error"));
			case BAD_GATEWAY -> answerBytes(exchange, 502, "<html>502 Bad Gateway</html>");
			case DROPPED -> {
				// Closing the exchange without an answer ends the connection.
			}
			case LOST_ANSWER -> {
				var unused = result(exchange, method, request);
			}
		}
	}

	private ObjectNode result(HttpExchange exchange, String method, StandInRequest request)
			throws IOException, InterruptedException {
		return switch (method) {
			case "getme" -> ok(this.mapper.createObjectNode()
				.put("id", BOT_ID)
				.put("is_bot", true)
				.put("first_name", "Measured Walk")
				.put("username", BOT_NAME));
			case "getupdates" -> getUpdates(request.fields());
			case "sendmessage" -> sendMessage(exchange.getRequestURI().getPath(), request);
			case "senddocument" -> sendDocument(exchange.getRequestURI().getPath(), request);
			case "sendphoto" -> sendPhoto(exchange.getRequestURI().getPath(), request);
			case "setmycommands" -> {
				takeCommands(request.fields());
				yield ok(this.mapper.getNodeFactory().booleanNode(true));
			}
			case "setwebhook" -> {
				this.webhook = request.fields().toString();
				yield ok(this.mapper.getNodeFactory().booleanNode(true));
			}
			case "deletewebhook" -> {
				this.webhook = "";
				yield ok(this.mapper.getNodeFactory().booleanNode(true));
			}
			case "answercallbackquery" -> ok(this.mapper.getNodeFactory().booleanNode(true));
			default -> error(404, "Not Found: " + exchange.getRequestURI().getPath());
		};
	}

	private ObjectNode getUpdates(JsonNode request) throws InterruptedException {
		if (!this.webhook.isEmpty()) {
			return error(409, "Conflict: can't use getUpdates method while webhook is active");
		}
		List<JsonNode> ready = this.updates.get(request.path("offset").asLong(0), request.path("limit").asInt(100),
				Duration.ofSeconds(request.path("timeout").asLong(0)));
		return (ready == null) ? error(409, "Conflict: terminated by other getUpdates request")
				: ok(this.mapper.valueToTree(ready));
	}

	private ObjectNode sendMessage(String path, StandInRequest request) throws IOException {
		String text = request.text("text");
		if (text.isBlank()) {
			return error(400, "Bad Request: message text is empty");
		}
		if (text.length() > 4096) {
			return error(400, "Bad Request: message is too long");
		}
		return take(path, request, text, null, null);
	}

	/** Limits by the documentation of {@code sendPhoto}. */
	private ObjectNode sendPhoto(String path, StandInRequest request) throws IOException {
		byte[] photo = request.file("photo");
		BufferedImage image = (photo != null) ? ImageIO.read(new ByteArrayInputStream(photo)) : null;
		if (photo == null) {
			return error(400, "Bad Request: there is no photo in the request");
		}
		if (image == null || photo.length > 10_000_000) {
			return error(400, "Bad Request: IMAGE_PROCESS_FAILED");
		}
		int longer = Math.max(image.getWidth(), image.getHeight());
		int shorter = Math.min(image.getWidth(), image.getHeight());
		if (longer + shorter > 10_000 || longer > 20 * shorter) {
			return error(400, "Bad Request: PHOTO_INVALID_DIMENSIONS");
		}
		if (request.text("caption").length() > 1024) {
			return error(400, "Bad Request: message caption is too long");
		}
		return this.withoutFiles.contains(request.chatId())
				? error(400, "Bad Request: not enough rights to send photos to the chat")
				: take(path, request, request.text("caption"), photo, null);
	}

	/** Limits by the documentation of {@code sendDocument}. */
	private ObjectNode sendDocument(String path, StandInRequest request) throws IOException {
		byte[] document = request.file("document");
		if (document == null || document.length == 0) {
			return error(400, "Bad Request: file must be non-empty");
		}
		if (document.length > 50_000_000) {
			return error(413, "Request Entity Too Large");
		}
		if (request.text("caption").length() > 1024) {
			return error(400, "Bad Request: message caption is too long");
		}
		return this.withoutFiles.contains(request.chatId())
				? error(400, "Bad Request: not enough rights to send documents to the chat")
				: take(path, request, request.text("caption"), null, document);
	}

	private ObjectNode take(String path, StandInRequest request, String text, byte[] photo, byte[] document)
			throws IOException {
		long chatId = request.chatId();
		if (this.blocked.contains(chatId)) {
			return error(403, "Forbidden: bot was blocked by the user");
		}
		Long movedTo = this.moved.get(chatId);
		if (movedTo != null) {
			ObjectNode gone = error(400, "Bad Request: group chat was upgraded to a supergroup chat");
			gone.putObject("parameters").put("migrate_to_chat_id", movedTo);
			return gone;
		}
		List<String> buttons = new ArrayList<>();
		List<String> labels = new ArrayList<>();
		request.buttons().forEach((row) -> row.forEach((button) -> {
			buttons.add(button.path("callback_data").asText());
			labels.add(button.path("text").asText());
		}));
		if (buttons.stream().anyMatch((data) -> data.getBytes(StandardCharsets.UTF_8).length > 64)) {
			return error(400, "Bad Request: BUTTON_DATA_INVALID");
		}
		int id = this.messageIds.incrementAndGet();
		synchronized (this.sent) {
			this.sent.add(new StandInMessage(id, chatId, text, photo, document, request.fileName("document"), buttons,
					labels, path.substring(0, path.indexOf("/bot")), System.nanoTime()));
		}
		ObjectNode message = this.mapper.createObjectNode()
			.put("message_id", id)
			.put("date", 1)
			.put((photo != null || document != null) ? "caption" : "text", text);
		message.putObject("chat").put("id", chatId).put("type", (chatId < 0) ? "group" : "private");
		if (photo != null) {
			message.putArray("photo")
				.addObject()
				.put("file_id", "sent-" + id)
				.put("file_unique_id", "s" + id)
				.put("width", 90)
				.put("height", 90);
		}
		if (document != null) {
			message.putObject("document").put("file_id", "sent-" + id).put("file_unique_id", "s" + id);
		}
		return ok(message);
	}

	private ObjectNode ok(JsonNode result) {
		return this.mapper.createObjectNode().put("ok", true).set("result", result);
	}

	private ObjectNode error(int code, String description) {
		return this.mapper.createObjectNode().put("ok", false).put("error_code", code).put("description", description);
	}

	private static void answer(HttpExchange exchange, int status, JsonNode body) throws IOException {
		answerBytes(exchange, status, body.toString());
	}

	private static void answerBytes(HttpExchange exchange, int status, String body) throws IOException {
		byte[] bytes = body.getBytes(StandardCharsets.UTF_8);
		exchange.sendResponseHeaders(status, bytes.length);
		exchange.getResponseBody().write(bytes);
	}

	@Override
	public void close() {
		this.server.stop(0);
		this.threads.shutdownNow();
	}

}
