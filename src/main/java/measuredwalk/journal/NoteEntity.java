package measuredwalk.journal;

import java.time.Instant;
import java.time.LocalDate;
import java.util.UUID;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;

@Entity
@SuppressWarnings("UnusedVariable") // The dog is written for the record and read by SQL
									// only.
@Table(name = "note")
class NoteEntity {

	@Id
	@GeneratedValue(strategy = GenerationType.IDENTITY)
	private Long id;

	private UUID dogId;

	@Enumerated(EnumType.STRING)
	private NoteTopic topic;

	private LocalDate noteDate;

	private String text;

	private String toldBy;

	private Instant toldAt;

	protected NoteEntity() {
	}

	NoteEntity(UUID dogId, Note note) {
		this.dogId = dogId;
		this.topic = note.topic();
		this.noteDate = note.date();
		this.text = note.said().text();
		this.toldBy = note.said().by();
		this.toldAt = note.said().at();
	}

	Note view() {
		return new Note(this.topic, this.noteDate, new Said(this.text, this.toldAt, this.toldBy));
	}

}
