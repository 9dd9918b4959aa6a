package measuredwalk.telegram;

import java.time.Duration;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

class TelegramSettingsTests {

	@ParameterizedTest
	@CsvSource({ "http://127.0.0.1:8081,http,127.0.0.1,8081,''",
			"https://bots.example.org,https,bots.example.org,443,''",
			"http://bots.example.org/telegram/,http,bots.example.org,80,/telegram" })
	void takesAnyServersAddress(String url, String scheme, String host, int port, String path) {
		TelegramSettings settings = settings(url, "", "");
		assertThat(settings.server().getSchema()).isEqualTo(scheme);
		assertThat(settings.server().getHost()).isEqualTo(host);
		assertThat(settings.server().getPort()).isEqualTo(port);
		assertThat(settings.serverPath()).isEqualTo(path);
	}

	@ParameterizedTest
	@ValueSource(strings = { "", "has space", "umläut" })
	void refusesAWebhookWithoutAProperSecret(String secret) {
		assertThatIllegalArgumentException().isThrownBy(() -> settings("", "https://bot.example.org/hook", secret))
			.withMessageContaining("webhook-secret");
	}

	@Test
	void keepsTokenAndSecretOutOfItsWords() {
		assertThat(settings("", "https://bot.example.org/hook", "secret9").toString()).doesNotContain("123:abc")
			.doesNotContain("secret9");
	}

	private static TelegramSettings settings(String apiUrl, String webhookUrl, String secret) {
		return new TelegramSettings("123:abc", apiUrl, webhookUrl, secret, 30, Duration.ofSeconds(1), 20, 2000,
				Duration.ofSeconds(25));
	}

}
