package measuredwalk.escalation;

import java.time.Instant;
import java.util.List;
import java.util.UUID;

import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

interface AlertRows extends JpaRepository<AlertEntity, UUID> {

	List<AlertEntity> findByStatusOrderByRaisedAtDesc(AlertStatus status);

	List<AlertEntity> findAllByOrderByRaisedAtDesc();

	@Query("select a.raisedAt from AlertEntity a where a.status = :status and a.level = :level")
	List<Instant> raisedAt(AlertStatus status, AlertLevel level);

	List<AlertEntity> findByDogIdOrderByRaisedAtDesc(UUID dogId);

	List<AlertEntity> findByDogIdAndStatusOrderByRaisedAtDesc(UUID dogId, AlertStatus status);

}
