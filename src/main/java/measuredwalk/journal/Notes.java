package measuredwalk.journal;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;

import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** What was told that is neither a walk nor a morning. Nothing is worked out from it. */
@Service
@Transactional
public class Notes {

	private final NoteRows rows;

	Notes(NoteRows rows) {
		this.rows = rows;
	}

	/**
	 * Keeps a note.
	 * @param dogId the dog
	 * @param note the note
	 */
	public void keep(UUID dogId, Note note) {
		this.rows.save(new NoteEntity(dogId, note));
	}

	/**
	 * All notes about a dog, by day.
	 * @param dogId the dog
	 * @return the notes
	 */
	@Transactional(readOnly = true)
	public List<Note> of(UUID dogId) {
		return this.rows.findByDogIdOrderByNoteDateAscIdAsc(dogId).stream().map(NoteEntity::view).toList();
	}

	/**
	 * Whether there is a note of a topic about a day.
	 * @param dogId the dog
	 * @param topic the topic
	 * @param date the day
	 * @return true when there is
	 */
	@Transactional(readOnly = true)
	public boolean any(UUID dogId, NoteTopic topic, LocalDate date) {
		return this.rows.existsByDogIdAndTopicAndNoteDate(dogId, topic, date);
	}

}
