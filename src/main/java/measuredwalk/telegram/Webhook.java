package measuredwalk.telegram;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.List;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.servlet.ServletException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.annotation.Order;
import org.springframework.http.HttpMethod;
import org.springframework.http.HttpStatus;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.annotation.web.configurers.AbstractHttpConfigurer;
import org.springframework.security.config.http.SessionCreationPolicy;
import org.springframework.security.web.SecurityFilterChain;
import org.springframework.security.web.servlet.util.matcher.PathPatternRequestMatcher;
import org.springframework.web.servlet.function.RouterFunction;
import org.springframework.web.servlet.function.RouterFunctions;
import org.springframework.web.servlet.function.ServerRequest;
import org.springframework.web.servlet.function.ServerResponse;

/**
 * Takes updates that Telegram sends to us. It answers once an update is stored; whatever
 * goes wrong before, Telegram sends it again.
 */
@Configuration(proxyBeanMethods = false)
@WithWebhook
class Webhook {

	private static final String SECRET_HEADER = "X-Telegram-Bot-Api-Secret-Token";

	private static final Logger log = LoggerFactory.getLogger(Webhook.class);

	private final ObjectMapper mapper = new ObjectMapper();

	private final TelegramSettings settings;

	private final Intake intake;

	Webhook(TelegramSettings settings, Intake intake) {
		this.settings = settings;
		this.intake = intake;
	}

	@Bean
	RouterFunction<ServerResponse> telegramUpdates() {
		return RouterFunctions.route().POST(this.settings.webhookPath(), this::take).build();
	}

	/** Who knows the secret may come in, and nobody else; there is no login to steal. */
	@Bean
	@Order(0)
	SecurityFilterChain telegramDoor(HttpSecurity http) throws Exception {
		return http
			.securityMatcher(
					PathPatternRequestMatcher.withDefaults().matcher(HttpMethod.POST, this.settings.webhookPath()))
			.authorizeHttpRequests((requests) -> requests.anyRequest().permitAll())
			.csrf(AbstractHttpConfigurer::disable)
			.sessionManagement((session) -> session.sessionCreationPolicy(SessionCreationPolicy.STATELESS))
			.build();
	}

	private ServerResponse take(ServerRequest request) throws ServletException, IOException {
		if (!carriesSecret(request)) {
			log.warn("Something that is not Telegram called the webhook; it was turned away.");
			return ServerResponse.status(HttpStatus.FORBIDDEN).build();
		}
		try {
			JsonNode update = this.mapper.readTree(request.body(byte[].class));
			this.intake.store(List.of(update));
			return ServerResponse.ok().build();
		}
		catch (JsonProcessingException ex) {
			return ServerResponse.badRequest().build();
		}
	}

	/** Compared in constant time, so that the secret cannot be found letter by letter. */
	private boolean carriesSecret(ServerRequest request) {
		String given = request.headers().firstHeader(SECRET_HEADER);
		return given != null && MessageDigest.isEqual(given.getBytes(StandardCharsets.UTF_8),
				this.settings.webhookSecret().getBytes(StandardCharsets.UTF_8));
	}

}
