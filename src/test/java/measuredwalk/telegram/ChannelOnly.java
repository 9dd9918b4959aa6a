package measuredwalk.telegram;

import java.util.List;
import java.util.stream.Stream;

import measuredwalk.messaging.IncomingHandler;
import measuredwalk.messaging.IncomingMessage;
import measuredwalk.messaging.Outbox;
import measuredwalk.messaging.OutgoingMessage;
import org.springframework.boot.autoconfigure.EnableAutoConfiguration;
import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.ComponentScan;

/**
 * Messages and Telegram without the story: every message is answered with its own words.
 * It carries no stereotype, so that no other test's context finds it.
 */
@EnableAutoConfiguration
@EnableConfigurationProperties(TelegramSettings.class)
@ComponentScan({ "measuredwalk.messaging", "measuredwalk.telegram", "measuredwalk.clock" })
class ChannelOnly {

	@Bean
	IncomingHandler echo(Outbox outbox) {
		return new IncomingHandler() {

			@Override
			public void handle(IncomingMessage message) {
				outbox.write(message.chatId(), "echo/" + message.id(), OutgoingMessage.of(message.text()));
			}

			@Override
			public void apologise(IncomingMessage message) {
				throw new IllegalStateException("Every message can be echoed.");
			}

		};
	}

	static ConfigurableApplicationContext start(BotApiStandIn api, List<String> settings) {
		String[] usual = { "--server.port=0", "--measuredwalk.telegram.token=" + BotApiStandIn.TOKEN,
				"--measuredwalk.telegram.api-url=" + api.url(), "--measuredwalk.telegram.chat-pause=1ms",
				"--measuredwalk.telegram.messages-per-second=500" };
		String[] all = Stream.concat(List.of(usual).stream(), settings.stream()).toArray(String[]::new);
		return new SpringApplicationBuilder(ChannelOnly.class).run(all);
	}

}
