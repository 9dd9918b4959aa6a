package measuredwalk.household;

import java.util.List;
import java.util.UUID;

import org.springframework.data.jpa.repository.JpaRepository;

interface PlanRows extends JpaRepository<PlanEntity, Long> {

	List<PlanEntity> findByDogIdOrderById(UUID dogId);

	List<PlanEntity> findAllByOrderById();

}
