package measuredwalk.escalation.delivery;

import java.time.Instant;
import java.util.Optional;

import measuredwalk.escalation.Sweep;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.core.annotation.Order;
import org.springframework.mail.MailException;
import org.springframework.mail.javamail.JavaMailSender;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** Sends the e-mails that wait. A server that is down costs a later try, nothing else. */
@Component
@Order(26)
class MailRound implements Sweep {

	private static final Logger log = LoggerFactory.getLogger(MailRound.class);

	private final AlertMails mails;

	private final AlertLetters letters;

	private final ObjectProvider<JavaMailSender> sender;

	MailRound(AlertMails mails, AlertLetters letters, ObjectProvider<JavaMailSender> sender) {
		this.mails = mails;
		this.letters = letters;
		this.sender = sender;
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
			server.send(this.letters.of(mail, server.createMimeMessage()));
			this.mails.sent(mail);
		}
		catch (MailException ex) {
			log.warn("E-mail {} about alert {} was not taken and is tried again: {}", mail.id(), mail.alertId(),
					ex.getMessage());
			this.mails.failed(mail, ex.getClass().getSimpleName());
		}
	}

}
