package measuredwalk.care;

import java.util.Map;

import measuredwalk.conversations.Part;
import measuredwalk.conversations.Phrase;
import measuredwalk.conversations.Replies;
import measuredwalk.escalation.ClinicContact;
import measuredwalk.escalation.ClinicSettings;
import org.springframework.stereotype.Component;

/** Whom to call, in words. */
@Component
class ClinicCall {

	private final ClinicSettings settings;

	private final Replies replies;

	ClinicCall(ClinicSettings settings, Replies replies) {
		this.settings = settings;
		this.replies = replies;
	}

	/** The numbers to call, or the plain advice to call the vet when none was set. */
	String phone() {
		ClinicContact contact = this.settings.contact();
		String phone = contact.phone();
		if (phone.isBlank()) {
			return this.replies.part(Part.USUAL_NUMBER);
		}
		String later = contact.outOfHoursPhone();
		return (later.isBlank() || later.equals(phone)) ? phone : this.replies.part(Part.OUT_OF_HOURS, phone, later);
	}

	String whomToCall(String dogName) {
		boolean known = !this.settings.contact().phone().isBlank();
		return this.replies.say(known ? Phrase.WHOM_TO_CALL : Phrase.WHOM_TO_CALL_WITHOUT_NUMBER,
				Map.of("dog", dogName, "phone", phone()));
	}

}
