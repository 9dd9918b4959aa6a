package measuredwalk.journal;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;

import org.springframework.data.jpa.repository.JpaRepository;

interface NoteRows extends JpaRepository<NoteEntity, Long> {

	List<NoteEntity> findByDogIdOrderByNoteDateAscIdAsc(UUID dogId);

	boolean existsByDogIdAndTopicAndNoteDate(UUID dogId, NoteTopic topic, LocalDate noteDate);

}
