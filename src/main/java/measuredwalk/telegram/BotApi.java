package measuredwalk.telegram;

import java.io.IOException;
import java.io.Serializable;
import java.time.Duration;
import java.util.Objects;

import com.fasterxml.jackson.databind.node.ArrayNode;
import okhttp3.Dispatcher;
import okhttp3.Interceptor;
import okhttp3.OkHttpClient;
import okhttp3.Response;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.stereotype.Component;
import org.telegram.telegrambots.client.okhttp.OkHttpTelegramClient;
import org.telegram.telegrambots.meta.api.methods.botapimethods.BotApiMethod;
import org.telegram.telegrambots.meta.api.methods.send.SendDocument;
import org.telegram.telegrambots.meta.api.methods.send.SendPhoto;
import org.telegram.telegrambots.meta.api.methods.updates.SetWebhook;
import org.telegram.telegrambots.meta.api.objects.ResponseParameters;
import org.telegram.telegrambots.meta.api.objects.message.Message;
import org.telegram.telegrambots.meta.exceptions.TelegramApiException;
import org.telegram.telegrambots.meta.exceptions.TelegramApiRequestException;
import org.telegram.telegrambots.meta.generics.TelegramClient;

/** Calls the Bot API and tells its errors apart. */
@Component
@WithToken
@EnableConfigurationProperties(TelegramSettings.class)
class BotApi {

	private static final Duration CONNECTING = Duration.ofSeconds(10);

	private static final Duration ANSWERING = Duration.ofSeconds(20);

	/** Several chats are sent to side by side, and the updates are waited for as well. */
	private static final int MOST_AT_ONCE = 64;

	private final TelegramClient client;

	private final OkHttpClient patient;

	private final TelegramClient patientClient;

	private final Duration longPoll;

	BotApi(TelegramSettings settings) {
		OkHttpClient http = http(settings.serverPath());
		this.longPoll = settings.longPoll();
		this.client = new OkHttpTelegramClient(http, settings.token(), settings.server());
		this.patient = http.newBuilder()
			.dispatcher(new Dispatcher())
			.readTimeout(ANSWERING.plus(this.longPoll))
			.build();
		this.patientClient = new OkHttpTelegramClient(this.patient, settings.token(), settings.server());
	}

	/**
	 * The HTTP client must not repeat a request by itself: a message that was taken and
	 * whose answer was lost would be sent again unseen.
	 */
	private static OkHttpClient http(String path) {
		Dispatcher dispatcher = new Dispatcher();
		dispatcher.setMaxRequests(MOST_AT_ONCE);
		dispatcher.setMaxRequestsPerHost(MOST_AT_ONCE);
		OkHttpClient.Builder builder = new OkHttpClient.Builder().dispatcher(dispatcher)
			.connectTimeout(CONNECTING)
			.readTimeout(ANSWERING)
			.writeTimeout(ANSWERING)
			.retryOnConnectionFailure(false);
		return (path.isEmpty() ? builder : builder.addInterceptor((chain) -> below(path, chain))).build();
	}

	/** The library knows a server by host and port only. */
	private static Response below(String path, Interceptor.Chain chain) throws IOException {
		var url = chain.request().url();
		return chain.proceed(chain.request()
			.newBuilder()
			.url(url.newBuilder().encodedPath(path + url.encodedPath()).build())
			.build());
	}

	/**
	 * Asks for updates and waits until there are some, or none came for a while.
	 * @param offset every update below it is confirmed; then the answer comes at once
	 * @return the updates, each as raw JSON
	 * @throws BotApiProblem when there is no proper answer
	 */
	ArrayNode fetch(@Nullable Long offset) {
		long timeout = (offset != null) ? 0 : this.longPoll.toSeconds();
		return calling(() -> this.patientClient.execute(new FetchUpdates(offset, timeout)));
	}

	/** Ends a request for updates that is waiting. */
	void breakOffFetching() {
		this.patient.dispatcher().cancelAll();
	}

	/**
	 * Calls a method.
	 * @param method the method
	 * @return its result
	 * @throws BotApiProblem when there is no proper answer
	 */
	<T extends Serializable> T call(BotApiMethod<T> method) {
		return calling(() -> this.client.execute(method));
	}

	/**
	 * Sends a picture.
	 * @param method the picture with its text
	 * @return the message as the server has it
	 * @throws BotApiProblem when there is no proper answer
	 */
	Message call(SendPhoto method) {
		return calling(() -> this.client.execute(method));
	}

	/**
	 * Sends a file.
	 * @param method the file with its text
	 * @return the message as the server has it
	 * @throws BotApiProblem when there is no proper answer
	 */
	Message call(SendDocument method) {
		return calling(() -> this.client.execute(method));
	}

	/** Not a JSON method, hence its own. */
	void call(SetWebhook method) {
		calling(() -> this.client.execute(method));
	}

	private static <T> T calling(Call<T> call) {
		try {
			return Objects.requireNonNull(call.run());
		}
		catch (TelegramApiRequestException ex) {
			throw problem(ex);
		}
		catch (TelegramApiException ex) {
			Throwable cause = (ex.getCause() != null) ? ex.getCause() : ex;
			throw new BotApiProblem(BotApiProblem.Kind.OUT_OF_ORDER, Duration.ZERO, cause.getClass().getSimpleName());
		}
	}

	private static BotApiProblem problem(TelegramApiRequestException ex) {
		Integer code = ex.getErrorCode();
		ResponseParameters parameters = ex.getParameters();
		Integer seconds = (parameters != null) ? parameters.getRetryAfter() : null;
		Long movedTo = (parameters != null) ? parameters.getMigrateToChatId() : null;
		return new BotApiProblem(BotApiProblem.Kind.of((code != null) ? code : 0),
				Duration.ofSeconds((seconds != null) ? seconds : 0), code + " " + ex.getApiResponse(),
				(movedTo != null) ? String.valueOf(movedTo) : null);
	}

	private interface Call<T> {

		T run() throws TelegramApiException;

	}

}
