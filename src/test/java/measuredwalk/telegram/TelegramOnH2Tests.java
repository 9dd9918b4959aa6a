package measuredwalk.telegram;

import org.springframework.test.context.TestPropertySource;

@TestPropertySource(properties = "spring.datasource.url=jdbc:h2:mem:telegram-story;MODE=PostgreSQL;"
		+ "DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH;DB_CLOSE_DELAY=-1")
class TelegramOnH2Tests extends TelegramStory {

}
