package measuredwalk.escalation;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

import org.jspecify.annotations.Nullable;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The alerts and their life: raised, acknowledged, closed. */
@Service
@Transactional
public class Alerts {

	private final AlertRows rows;

	private final ApplicationEventPublisher events;

	private final Clock clock;

	Alerts(AlertRows rows, ApplicationEventPublisher events, Clock clock) {
		this.rows = rows;
		this.events = events;
		this.clock = clock;
	}

	/**
	 * Raises an alert. While one of the same or a higher level is open for the dog, the
	 * words are added to it instead: one alert for one episode, and a worse one again.
	 * @param dogId the dog
	 * @param level how soon the clinic must look
	 * @param reason why, in words of the trade
	 * @param evidence the owner's words
	 * @return the alert that holds the words
	 */
	public Alert raise(UUID dogId, AlertLevel level, String reason, Evidence evidence) {
		return raise(dogId, level, reason, List.of(evidence));
	}

	/**
	 * Raises an alert that rests on words of several times.
	 * @param dogId the dog
	 * @param level how soon the clinic must look
	 * @param reason why, in words of the trade
	 * @param evidence the owner's words, oldest first
	 * @return the alert that holds the words
	 */
	public Alert raise(UUID dogId, AlertLevel level, String reason, List<Evidence> evidence) {
		Optional<AlertEntity> episode = this.rows.findByDogIdAndStatusOrderByRaisedAtDesc(dogId, AlertStatus.OPEN)
			.stream()
			.filter((open) -> open.level().compareTo(level) >= 0)
			.findFirst();
		if (episode.isPresent()) {
			episode.get().add(reason, evidence);
			return episode.get().view();
		}
		Alert alert = this.rows.saveAndFlush(new AlertEntity(dogId, level, reason, evidence, this.clock.instant()))
			.view();
		this.events.publishEvent(new AlertRaised(alert.id(), dogId));
		return alert;
	}

	/**
	 * Finds an alert.
	 * @param id its number
	 * @return the alert, or empty
	 */
	@Transactional(readOnly = true)
	public Optional<Alert> one(UUID id) {
		return this.rows.findById(id).map(AlertEntity::view);
	}

	/**
	 * Alerts, the newest first.
	 * @param status only those of this status, or null for all
	 * @return the alerts
	 */
	@Transactional(readOnly = true)
	public List<Alert> list(@Nullable AlertStatus status) {
		List<AlertEntity> found = (status != null) ? this.rows.findByStatusOrderByRaisedAtDesc(status)
				: this.rows.findAllByOrderByRaisedAtDesc();
		return found.stream().map(AlertEntity::view).toList();
	}

	/**
	 * Alerts of a dog, the newest first.
	 * @param dogId the dog
	 * @return its alerts
	 */
	@Transactional(readOnly = true)
	public List<Alert> of(UUID dogId) {
		return this.rows.findByDogIdOrderByRaisedAtDesc(dogId).stream().map(AlertEntity::view).toList();
	}

	/**
	 * Notes that somebody has seen an alert.
	 * @param id the alert
	 * @param by who
	 * @param note what is to be done
	 * @return the alert as it is now, or empty when there is no such alert
	 */
	public Optional<Alert> acknowledge(UUID id, String by, String note) {
		return this.rows.findById(id).map((alert) -> {
			boolean news = alert.isOpen();
			alert.acknowledge(by, this.clock.instant(), note);
			return seen(alert, news);
		});
	}

	private Alert seen(AlertEntity alert, boolean news) {
		Alert view = alert.view();
		if (news) {
			this.events.publishEvent(new AlertSeen(view.id(), view.dogId()));
		}
		return view;
	}

	/**
	 * Closes an alert.
	 * @param id the alert
	 * @param by who
	 * @param note what was done
	 * @return the alert as it is now, or empty when there is no such alert
	 */
	public Optional<Alert> close(UUID id, String by, String note) {
		return this.rows.findById(id).map((alert) -> {
			boolean news = alert.isOpen();
			alert.close(by, this.clock.instant(), note);
			return seen(alert, news);
		});
	}

}
