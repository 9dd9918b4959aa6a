package measuredwalk.journal;

import java.util.List;
import java.util.UUID;

import org.springframework.data.jpa.repository.JpaRepository;

interface AttachmentRows extends JpaRepository<AttachmentEntity, Long> {

	List<AttachmentEntity> findByDogIdOrderById(UUID dogId);

}
