package measuredwalk.journal;

import java.time.Instant;
import java.util.UUID;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import org.jspecify.annotations.Nullable;

@Entity
@SuppressWarnings("UnusedVariable") // The dog is written for the record and read by SQL
									// only.
@Table(name = "attachment")
class AttachmentEntity {

	@Id
	@GeneratedValue(strategy = GenerationType.IDENTITY)
	private Long id;

	private UUID dogId;

	private @Nullable UUID entryId;

	@Enumerated(EnumType.STRING)
	private AttachmentKind kind;

	private String reference;

	private String sentBy;

	private Instant sentAt;

	protected AttachmentEntity() {
	}

	AttachmentEntity(UUID dogId, Attached attached) {
		this.dogId = dogId;
		this.entryId = attached.entryId();
		this.kind = attached.kind();
		this.reference = attached.reference();
		this.sentBy = attached.by();
		this.sentAt = attached.at();
	}

	Attached view() {
		return new Attached(this.entryId, this.kind, this.reference, this.sentBy, this.sentAt);
	}

}
