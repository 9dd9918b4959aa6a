package measuredwalk.escalation.delivery;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import measuredwalk.escalation.Alert;
import measuredwalk.escalation.AlertStatus;
import measuredwalk.escalation.Alerts;
import measuredwalk.escalation.StaffChats;
import measuredwalk.escalation.StaffReplies;
import measuredwalk.household.Dog;
import measuredwalk.household.Households;
import org.springframework.stereotype.Component;

/** Lets staff acknowledge an alert from the chat in which they read it. */
@Component
class SeenByChat implements StaffReplies {

	private static final Pattern SEEN = Pattern.compile("\\s*seen\\s+([0-9a-f]{6})\\b[\\s:,.]*(.*)",
			Pattern.CASE_INSENSITIVE | Pattern.DOTALL);

	private static final int LONGEST_NOTE = 2000;

	private final StaffChats staffChats;

	private final Alerts alerts;

	private final Households households;

	private final AlertWords words;

	SeenByChat(StaffChats staffChats, Alerts alerts, Households households, AlertWords words) {
		this.staffChats = staffChats;
		this.alerts = alerts;
		this.households = households;
		this.words = words;
	}

	@Override
	public Optional<String> answer(long chatId, String sender, String text) {
		if (!this.staffChats.isOne(chatId)) {
			return Optional.empty();
		}
		Matcher matcher = SEEN.matcher(text);
		if (matcher.matches()) {
			return Optional.of(seen(sender, matcher.group(1).toUpperCase(Locale.ROOT), matcher.group(2)));
		}
		return this.households.carerIn(chatId).isPresent() ? Optional.empty() : Optional.of(toTalk(text));
	}

	/** Colleagues may talk among themselves; only a command is answered. */
	private String toTalk(String text) {
		return text.strip().startsWith("/") ? this.words.staff("help", Map.of()) : "";
	}

	private String seen(String sender, String code, String note) {
		String shortNote = (note.length() <= LONGEST_NOTE) ? note : note.substring(0, LONGEST_NOTE);
		Optional<Alert> alert = this.alerts.list(AlertStatus.OPEN)
			.stream()
			.filter((open) -> AlertWords.code(open.id()).equals(code))
			.findFirst()
			.flatMap((open) -> this.alerts.acknowledge(open.id(), sender + " (by chat)", shortNote.strip()));
		String dog = alert.flatMap((each) -> this.households.dog(each.dogId())).map(Dog::name).orElse("");
		return alert.isPresent() ? this.words.staff("seen", Map.of("dog", dog))
				: this.words.staff("unknown", Map.of("code", code));
	}

}
