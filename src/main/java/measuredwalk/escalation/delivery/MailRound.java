package measuredwalk.escalation.delivery;

import java.time.Instant;
import java.util.Optional;

import measuredwalk.escalation.Alert;
import measuredwalk.escalation.Alerts;
import measuredwalk.escalation.Sweep;
import measuredwalk.household.Dog;
import measuredwalk.household.Households;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.core.annotation.Order;
import org.springframework.mail.MailException;
import org.springframework.mail.SimpleMailMessage;
import org.springframework.mail.javamail.JavaMailSender;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** Sends the e-mails that wait. A server that is down costs a later try, nothing else. */
@Component
@Order(26)
class MailRound implements Sweep {

	private static final Logger log = LoggerFactory.getLogger(MailRound.class);

	private final AlertMails mails;

	private final Alerts alerts;

	private final Households households;

	private final AlertWords words;

	private final ObjectProvider<JavaMailSender> sender;

	private final String from;

	MailRound(AlertMails mails, Alerts alerts, Households households, AlertWords words,
			ObjectProvider<JavaMailSender> sender,
			@Value("${measuredwalk.clinic.mail-from:measured-walk@localhost}") String from) {
		this.mails = mails;
		this.alerts = alerts;
		this.households = households;
		this.words = words;
		this.sender = sender;
		this.from = from;
	}

	@Override
	public Optional<Instant> nextDue() {
		return this.mails.nextDue();
	}

	@Override
	@Transactional
	public void catchUp() {
		this.mails.due().forEach(this::send);
	}

	private void send(AlertMails.Waiting mail) {
		JavaMailSender server = this.sender.getIfAvailable();
		if (server == null) {
			this.mails.failed(mail, "No mail server is set: spring.mail.host is missing.");
			return;
		}
		try {
			server.send(message(mail));
			this.mails.sent(mail);
		}
		catch (MailException ex) {
			log.warn("E-mail {} about alert {} was not taken and is tried again: {}", mail.id(), mail.alertId(),
					ex.getMessage());
			this.mails.failed(mail, ex.getClass().getSimpleName());
		}
	}

	private SimpleMailMessage message(AlertMails.Waiting mail) {
		Alert alert = this.alerts.one(mail.alertId()).orElseThrow();
		Dog dog = this.households.dog(alert.dogId()).orElseThrow();
		SimpleMailMessage message = new SimpleMailMessage();
		message.setFrom(this.from);
		message.setTo(mail.address());
		message.setSubject(this.words.mailSubject(alert, dog, mail.round()).replaceAll("[\\r\\n]+", " "));
		message.setText(this.words.mailBody(alert, dog, mail.round()));
		return message;
	}

}
