package measuredwalk.household;

import java.util.List;
import java.util.UUID;

import org.springframework.data.jpa.repository.JpaRepository;

interface DogRows extends JpaRepository<DogEntity, UUID> {

	List<DogEntity> findByHouseholdIdOrderByNameAscIdAsc(UUID householdId);

	List<DogEntity> findAllByOrderByNameAscIdAsc();

}
