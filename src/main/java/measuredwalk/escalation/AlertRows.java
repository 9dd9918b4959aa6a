package measuredwalk.escalation;

import java.util.List;
import java.util.UUID;

import org.springframework.data.jpa.repository.JpaRepository;

interface AlertRows extends JpaRepository<AlertEntity, UUID> {

	List<AlertEntity> findByStatusOrderByRaisedAtDesc(AlertStatus status);

	List<AlertEntity> findAllByOrderByRaisedAtDesc();

	List<AlertEntity> findByDogIdOrderByRaisedAtDesc(UUID dogId);

	List<AlertEntity> findByDogIdAndStatusOrderByRaisedAtDesc(UUID dogId, AlertStatus status);

}
