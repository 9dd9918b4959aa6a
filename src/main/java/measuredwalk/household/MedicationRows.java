package measuredwalk.household;

import java.util.List;
import java.util.UUID;

import org.springframework.data.jpa.repository.JpaRepository;

interface MedicationRows extends JpaRepository<MedicationEntity, Long> {

	List<MedicationEntity> findByDogIdOrderById(UUID dogId);

	List<MedicationEntity> findAllByOrderById();

}
