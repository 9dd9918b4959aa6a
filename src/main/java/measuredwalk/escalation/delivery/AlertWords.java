package measuredwalk.escalation.delivery;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.UUID;
import java.util.stream.Collectors;

import measuredwalk.escalation.Alert;
import measuredwalk.household.Dog;
import org.springframework.core.io.ClassPathResource;
import org.springframework.core.io.support.EncodedResource;
import org.springframework.core.io.support.PropertiesLoaderUtils;
import org.springframework.stereotype.Component;

/** Alerts in words, for staff and for owners. */
@Component
class AlertWords {

	private static final String FILE = "measuredwalk/escalation/words.properties";

	private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("EEE d MMM, HH:mm", Locale.UK);

	private static final int CODE_LENGTH = 6;

	private final Properties words;

	AlertWords() {
		try {
			this.words = PropertiesLoaderUtils
				.loadProperties(new EncodedResource(new ClassPathResource(FILE), "UTF-8"));
		}
		catch (IOException ex) {
			throw new UncheckedIOException("The file " + FILE + " cannot be read.", ex);
		}
	}

	/** A short code that names an alert among those that are open. */
	static String code(UUID alertId) {
		return alertId.toString().substring(0, CODE_LENGTH).toUpperCase(Locale.ROOT);
	}

	String chat(Alert alert, Dog dog, int round) {
		return say("chat", places(alert, dog, round));
	}

	/** What the picture of an alert shows. */
	String picture(Dog dog) {
		return say("chat.picture", Map.of("dog", dog.name()));
	}

	String mailSubject(Alert alert, Dog dog, int round) {
		return say("mail.subject", places(alert, dog, round));
	}

	String mailBody(Alert alert, Dog dog, int round) {
		return say("mail.body", places(alert, dog, round));
	}

	String mailBodyWithTrend(Alert alert, Dog dog, int round, String summary) {
		return say("mail.trend", Map.of("body", mailBody(alert, dog, round), "summary", summary));
	}

	String ownerSeen(Alert alert, Dog dog) {
		String note = (alert.note() != null) ? alert.note().strip() : "";
		String key = note.isEmpty() ? "owner.seen" : "owner.seen-with-note";
		String own = key + "." + dog.household().speech().language();
		return say(this.words.containsKey(own) ? own : key, Map.of("dog", dog.name(), "note", note));
	}

	String staff(String key, Map<String, String> places) {
		return say("staff." + key, places);
	}

	private Map<String, String> places(Alert alert, Dog dog, int round) {
		ZoneId zone = dog.household().timeZone();
		String said = alert.evidence()
			.stream()
			.map((each) -> say("said", Map.of("text", each.said(), "by", each.by(), "at", moment(each.at(), zone))))
			.collect(Collectors.joining("\n"));
		return Map.of("again", (round > 0) ? say("again", Map.of()) + ". " : "", "level",
				say("level." + alert.level().code(), Map.of()), "dog", dog.name(), "reason", alert.reason(), "words",
				said, "code", code(alert.id()), "at", moment(alert.raisedAt(), zone));
	}

	private static String moment(Instant at, ZoneId zone) {
		return MOMENT.format(at.atZone(zone));
	}

	/**
	 * Places are filled in one pass, so that an owner's braces stay an owner's braces.
	 */
	private String say(String key, Map<String, String> places) {
		String text = this.words.getProperty(key);
		if (text == null) {
			throw new IllegalStateException(FILE + " must have the words '" + key + "'.");
		}
		return java.util.regex.Pattern.compile("\\{([a-z]+)}")
			.matcher(text)
			.replaceAll((place) -> java.util.regex.Matcher
				.quoteReplacement(places.getOrDefault(place.group(1), place.group())));
	}

}
