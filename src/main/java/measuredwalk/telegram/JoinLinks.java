package measuredwalk.telegram;

import java.util.Optional;

import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Service;

/** Links that open the chat with the bot and join a household at one touch. */
@Service
public class JoinLinks {

	private final ObjectProvider<Introduction> introduction;

	JoinLinks(ObjectProvider<Introduction> introduction) {
		this.introduction = introduction;
	}

	/**
	 * The link for a code.
	 * @param code a join or alert code
	 * @return the link, or empty without Telegram, and for as long as the Bot API has not
	 * said what the bot is called
	 */
	public Optional<String> to(String code) {
		return Optional.ofNullable(this.introduction.getIfAvailable())
			.map((each) -> each.identity().username())
			.filter((username) -> !username.isEmpty())
			.map((username) -> "https://t.me/" + username + "?start=" + code);
	}

}
