package measuredwalk.care;

import java.util.Map;

import measuredwalk.conversations.Phrase;
import measuredwalk.conversations.Replies;
import measuredwalk.escalation.ClinicContact;
import org.springframework.stereotype.Component;

/** Whom to call, in words. */
@Component
class ClinicCall {

	private final ClinicContact contact;

	private final Replies replies;

	ClinicCall(ClinicContact contact, Replies replies) {
		this.contact = contact;
		this.replies = replies;
	}

	/** The numbers to call, or the plain advice to call the vet when none was set. */
	String phone() {
		String phone = this.contact.phone();
		if (phone == null || phone.isBlank()) {
			return "your vet's usual number";
		}
		String later = this.contact.outOfHoursPhone();
		return (later == null || later.isBlank() || later.equals(phone)) ? phone
				: phone + " (out of hours " + later + ")";
	}

	String whomToCall(String dogName) {
		boolean known = this.contact.phone() != null && !this.contact.phone().isBlank();
		return this.replies.say(known ? Phrase.WHOM_TO_CALL : Phrase.WHOM_TO_CALL_WITHOUT_NUMBER,
				Map.of("dog", dogName, "phone", phone()));
	}

}
