package measuredwalk.escalation.delivery;

import java.nio.charset.StandardCharsets;
import java.util.Optional;

import jakarta.mail.MessagingException;
import jakarta.mail.internet.MimeMessage;
import measuredwalk.escalation.Alert;
import measuredwalk.escalation.AlertTrend;
import measuredwalk.escalation.Alerts;
import measuredwalk.household.Dog;
import measuredwalk.household.Households;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.core.io.ByteArrayResource;
import org.springframework.mail.MailPreparationException;
import org.springframework.mail.javamail.MimeMessageHelper;
import org.springframework.stereotype.Component;

/**
 * E-mails about alerts as they are sent: plain text, and the days before as a picture.
 */
@Component
class AlertLetters {

	private static final Logger log = LoggerFactory.getLogger(AlertLetters.class);

	/** Sharp on screens with small pixels. */
	private static final double SCALE = 2;

	private final Alerts alerts;

	private final Households households;

	private final AlertTrend trend;

	private final AlertWords words;

	private final String from;

	AlertLetters(Alerts alerts, Households households, AlertTrend trend, AlertWords words,
			@Value("${measuredwalk.clinic.mail-from:measured-walk@localhost}") String from) {
		this.alerts = alerts;
		this.households = households;
		this.trend = trend;
		this.words = words;
		this.from = from;
	}

	/** The days before an alert, drawn and said. */
	private record Drawn(byte[] png, String summary) {
	}

	MimeMessage of(AlertMails.Waiting mail, MimeMessage empty) {
		Alert alert = this.alerts.one(mail.alertId()).orElseThrow();
		Dog dog = this.households.dog(alert.dogId()).orElseThrow();
		try {
			MimeMessageHelper letter = new MimeMessageHelper(empty, MimeMessageHelper.MULTIPART_MODE_MIXED,
					StandardCharsets.UTF_8.name());
			letter.setFrom(this.from);
			letter.setTo(mail.address());
			letter.setSubject(this.words.mailSubject(alert, dog, mail.round()).replaceAll("[\\r\\n]+", " "));
			Optional<Drawn> drawn = drawn(alert, dog);
			letter.setText(drawn.map((each) -> this.words.mailBodyWithTrend(alert, dog, mail.round(), each.summary()))
				.orElseGet(() -> this.words.mailBody(alert, dog, mail.round())));
			if (drawn.isPresent()) {
				letter.addInline("trend", "days-before.png", new ByteArrayResource(drawn.get().png()), "image/png");
			}
			return empty;
		}
		catch (MessagingException ex) {
			throw new MailPreparationException("The e-mail could not be written.", ex);
		}
	}

	/** An alert must arrive even where no picture can be drawn. */
	private Optional<Drawn> drawn(Alert alert, Dog dog) {
		try {
			var picture = this.trend.of(alert, dog);
			return Optional.of(new Drawn(picture.png(SCALE), picture.summary()));
		}
		catch (RuntimeException | LinkageError ex) {
			log.warn("The picture of alert {} could not be drawn; its e-mail goes without.", alert.id(), ex);
			return Optional.empty();
		}
	}

}
