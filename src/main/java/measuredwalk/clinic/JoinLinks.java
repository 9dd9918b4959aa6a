package measuredwalk.clinic;

import java.util.Optional;

import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;

/** Links that open the bot's chat with a code in it. There are none without a bot. */
@Component
public class JoinLinks {

	private final String bot;

	JoinLinks(@Value("${measuredwalk.telegram.username:}") String bot) {
		this.bot = bot.strip().replaceFirst("^@", "");
	}

	/**
	 * The link for a code.
	 * @param code the code
	 * @return the link, or empty when no bot's name is set
	 */
	public Optional<String> to(String code) {
		return this.bot.isEmpty() ? Optional.empty() : Optional.of("https://t.me/" + this.bot + "?start=" + code);
	}

}
