package measuredwalk.escalation;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;

import jakarta.persistence.Convert;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import org.jspecify.annotations.Nullable;

@Entity
@Table(name = "alert")
class AlertEntity {

	private static final int LONGEST_REASON = 400;

	@Id
	private UUID id;

	private UUID dogId;

	@Enumerated(EnumType.STRING)
	private AlertLevel level;

	private Instant raisedAt;

	private String reason;

	@Convert(converter = EvidenceColumn.class)
	private List<Evidence> evidence;

	@Enumerated(EnumType.STRING)
	private AlertStatus status;

	private @Nullable String acknowledgedBy;

	private @Nullable Instant acknowledgedAt;

	private @Nullable String acknowledgeNote;

	private @Nullable String closedBy;

	private @Nullable Instant closedAt;

	private @Nullable String closeNote;

	protected AlertEntity() {
	}

	AlertEntity(UUID dogId, AlertLevel level, String reason, List<Evidence> evidence, Instant raisedAt) {
		this.id = UUID.randomUUID();
		this.dogId = dogId;
		this.level = level;
		this.raisedAt = raisedAt;
		this.reason = cut(reason);
		this.evidence = List.copyOf(evidence);
		this.status = AlertStatus.OPEN;
	}

	private static String cut(String reason) {
		return (reason.length() <= LONGEST_REASON) ? reason : reason.substring(0, LONGEST_REASON);
	}

	boolean isOpen() {
		return this.status == AlertStatus.OPEN;
	}

	AlertLevel level() {
		return this.level;
	}

	/** Adds what was told since; what the alert holds already is not repeated. */
	void add(String otherReason, List<Evidence> more) {
		List<Evidence> all = new ArrayList<>(this.evidence);
		more.stream().filter((each) -> !this.evidence.contains(each)).forEach(all::add);
		this.evidence = all;
		if (!this.reason.contains(otherReason)) {
			this.reason = cut(this.reason + "; " + otherReason);
		}
	}

	/** Seen by somebody; the first one to see it stays named. */
	void acknowledge(String by, Instant at, String note) {
		if (this.status == AlertStatus.OPEN) {
			this.status = AlertStatus.ACKNOWLEDGED;
			this.acknowledgedBy = by;
			this.acknowledgedAt = at;
			this.acknowledgeNote = note;
		}
	}

	void close(String by, Instant at, String note) {
		acknowledge(by, at, note);
		if (this.status != AlertStatus.CLOSED) {
			this.status = AlertStatus.CLOSED;
			this.closedBy = by;
			this.closedAt = at;
			this.closeNote = note;
		}
	}

	Alert view() {
		return new Alert(this.id, this.dogId, this.level, this.raisedAt, this.reason, this.evidence, this.status,
				this.acknowledgedBy, this.acknowledgedAt, this.acknowledgeNote, this.closedBy, this.closedAt,
				this.closeNote);
	}

}
