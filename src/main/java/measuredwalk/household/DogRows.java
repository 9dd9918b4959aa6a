package measuredwalk.household;

import java.util.List;
import java.util.Optional;
import java.util.UUID;

import jakarta.persistence.LockModeType;
import org.springframework.data.jpa.repository.EntityGraph;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Lock;

interface DogRows extends JpaRepository<DogEntity, UUID> {

	@EntityGraph(attributePaths = "household")
	List<DogEntity> findByHouseholdIdOrderByNameAscIdAsc(UUID householdId);

	@EntityGraph(attributePaths = "household")
	List<DogEntity> findAllByOrderByNameAscIdAsc();

	@Lock(LockModeType.PESSIMISTIC_WRITE)
	Optional<DogEntity> findForChangeById(UUID id);

}
