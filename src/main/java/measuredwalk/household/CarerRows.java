package measuredwalk.household;

import java.time.Instant;
import java.util.List;
import java.util.UUID;

import org.springframework.data.jpa.repository.JpaRepository;

interface CarerRows extends JpaRepository<CarerEntity, UUID> {

	List<CarerEntity> findByChatIdAndLeftAtIsNullOrderByJoinedAtDesc(long chatId);

	List<CarerEntity> findByChatIdAndLeftAt(long chatId, Instant leftAt);

	List<CarerEntity> findByHouseholdIdAndLeftAtIsNullOrderByJoinedAt(UUID householdId);

}
