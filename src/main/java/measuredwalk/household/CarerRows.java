package measuredwalk.household;

import java.util.List;
import java.util.Optional;
import java.util.UUID;

import org.springframework.data.jpa.repository.JpaRepository;

interface CarerRows extends JpaRepository<CarerEntity, UUID> {

	Optional<CarerEntity> findByChatIdAndLeftAtIsNull(long chatId);

	List<CarerEntity> findByHouseholdIdAndLeftAtIsNullOrderByJoinedAt(UUID householdId);

}
