package measuredwalk.journal;

import java.util.List;
import java.util.Optional;
import java.util.UUID;

import org.springframework.data.jpa.repository.JpaRepository;

interface WalkEntryRows extends JpaRepository<WalkEntryEntity, Long> {

	List<WalkEntryEntity> findByDogIdOrderByWalkDateAscIdAsc(UUID dogId);

	Optional<WalkEntryEntity> findByEntryIdAndStanding(UUID entryId, Standing standing);

	Optional<WalkEntryEntity> findFirstByTellingReportedByAndStandingOrderByTellingReportedAtDescIdDesc(UUID carerId,
			Standing standing);

}
