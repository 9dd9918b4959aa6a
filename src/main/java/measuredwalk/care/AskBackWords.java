package measuredwalk.care;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import measuredwalk.conversations.Replies;
import measuredwalk.reading.AskBack;
import measuredwalk.reading.OwnerMessage;
import measuredwalk.signs.Coded;
import measuredwalk.signs.SignKind;
import measuredwalk.speech.Speaking;
import org.springframework.stereotype.Component;

/**
 * The two readings of an ask-back in the language of whoever is asked. The reader gives
 * them in the English of its rules.
 */
@Component
class AskBackWords {

	private static final Pattern AMOUNT = Pattern.compile("(\\d+) (minutes|metres)");

	private static final String DENIED = "no ";

	private final Replies replies;

	private final Figures figures;

	AskBackWords(Replies replies, Figures figures) {
		this.replies = replies;
		this.figures = figures;
	}

	List<String> readings(AskBack askBack) {
		boolean english = Speaking.now().language().equals(OwnerMessage.ENGLISH);
		return english ? askBack.readings() : askBack.readings().stream().map(this::said).toList();
	}

	private String said(String reading) {
		Matcher amount = AMOUNT.matcher(reading);
		if (amount.matches()) {
			double figure = Double.parseDouble(amount.group(1));
			return amount.group(2).equals("minutes") ? this.figures.minutes(figure) : this.figures.distance(figure);
		}
		boolean denied = reading.startsWith(DENIED);
		return sign(denied ? reading.substring(DENIED.length()) : reading)
			.map((kind) -> this.replies.word(denied ? "denied" : "seen", kind).replace("{how}", "").strip())
			.orElse(reading);
	}

	private static Optional<SignKind> sign(String words) {
		try {
			return Optional.of(Coded.of(SignKind.class, words.toLowerCase(Locale.ROOT).replace(' ', '-')));
		}
		catch (IllegalArgumentException ex) {
			return Optional.empty();
		}
	}

}
