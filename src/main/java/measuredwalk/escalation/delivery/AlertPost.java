package measuredwalk.escalation.delivery;

import java.time.Clock;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

import measuredwalk.escalation.Alert;
import measuredwalk.escalation.AlertRaised;
import measuredwalk.escalation.AlertStatus;
import measuredwalk.escalation.Alerts;
import measuredwalk.escalation.ClinicSettings;
import measuredwalk.escalation.StaffChat;
import measuredwalk.escalation.StaffChats;
import measuredwalk.escalation.Sweep;
import measuredwalk.household.Dog;
import measuredwalk.household.Households;
import measuredwalk.messaging.Outbox;
import measuredwalk.messaging.OutgoingMessage;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.context.event.EventListener;
import org.springframework.core.annotation.Order;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/**
 * Tells the clinic of an alert by every way there is, and again while nobody has seen it.
 * What is to be sent is stored with the alert in one transaction.
 */
@Component
@Order(25)
class AlertPost implements Sweep {

	private static final Logger log = LoggerFactory.getLogger(AlertPost.class);

	private final Alerts alerts;

	private final Households households;

	private final StaffChats staffChats;

	private final ClinicSettings settings;

	private final Outbox outbox;

	private final AlertMails mails;

	private final AlertWords words;

	private final JdbcClient database;

	private final Clock clock;

	AlertPost(Alerts alerts, Households households, StaffChats staffChats, ClinicSettings settings, Outbox outbox,
			AlertMails mails, AlertWords words, JdbcClient database, Clock clock) {
		this.alerts = alerts;
		this.households = households;
		this.staffChats = staffChats;
		this.settings = settings;
		this.outbox = outbox;
		this.mails = mails;
		this.words = words;
		this.database = database;
		this.clock = clock;
	}

	@EventListener
	@Transactional
	public void raised(AlertRaised raised) {
		Alert alert = this.alerts.one(raised.alertId()).orElseThrow();
		Instant first = plan(alert).first(this.clock.instant());
		if (first.isAfter(this.clock.instant())) {
			expect(alert.id(), 0, first);
		}
		else {
			tell(alert, 0);
		}
	}

	private RoundPlan plan(Alert alert) {
		return new RoundPlan(alert.level(), this.settings.openingHours(), this.settings.alertMail());
	}

	private void tell(Alert alert, int round) {
		Dog dog = this.households.dog(alert.dogId()).orElseThrow();
		List<StaffChat> chats = this.staffChats.all();
		List<String> addresses = plan(alert).addresses(round);
		OutgoingMessage words = new OutgoingMessage(this.words.chat(alert, dog, round),
				List.of("seen " + AlertWords.code(alert.id())));
		OutgoingMessage message = (round == 0) ? words.with(AlertPictures.of(alert, this.words.picture(dog))) : words;
		chats.forEach(
				(chat) -> this.outbox.write(chat.chatId(), key(alert.id()) + round + "/" + chat.chatId(), message));
		addresses.forEach((address) -> this.mails.write(alert.id(), round, address));
		if (chats.isEmpty() && addresses.isEmpty()) {
			log.warn("Alert {} stands on the clinic's page only: there is neither a staff chat nor an e-mail address.",
					alert.id());
		}
		plan(alert).after(round, this.clock.instant()).ifPresent((due) -> expect(alert.id(), round + 1, due));
	}

	/** How the keys of an alert's messages begin in the outbox. */
	static String key(UUID alertId) {
		return "alert/" + alertId + "/";
	}

	private void expect(UUID alertId, int round, Instant due) {
		this.database
			.sql("insert into alert_watch (alert_id, next_round, due_at) values (?, ?, ?) on conflict do nothing")
			.params(alertId, round, due.atOffset(ZoneOffset.UTC))
			.update();
	}

	@Override
	public Optional<Instant> nextDue() {
		return this.database.sql("select min(due_at) from alert_watch")
			.query((row, number) -> Optional.ofNullable(row.getObject(1, OffsetDateTime.class))
				.map(OffsetDateTime::toInstant))
			.single();
	}

	@Override
	@Transactional
	public void catchUp() {
		this.database.sql(
				"select alert_id, next_round from alert_watch where due_at <= ? order by due_at for update skip locked")
			.param(this.clock.instant().atOffset(ZoneOffset.UTC))
			.query(Due.class)
			.list()
			.forEach(this::tellAgain);
	}

	private void tellAgain(Due due) {
		this.database.sql("delete from alert_watch where alert_id = ?").param(due.alertId()).update();
		this.alerts.one(due.alertId())
			.filter((alert) -> alert.status() == AlertStatus.OPEN)
			.ifPresent((alert) -> tell(alert, due.nextRound()));
	}

	/** A round that is due. */
	record Due(UUID alertId, int nextRound) {
	}

}
