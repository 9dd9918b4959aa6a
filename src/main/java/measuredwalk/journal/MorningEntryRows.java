package measuredwalk.journal;

import java.util.List;
import java.util.Optional;
import java.util.UUID;

import org.springframework.data.jpa.repository.JpaRepository;

interface MorningEntryRows extends JpaRepository<MorningEntryEntity, Long> {

	List<MorningEntryEntity> findByDogIdOrderByMorningDateAscIdAsc(UUID dogId);

	Optional<MorningEntryEntity> findByEntryIdAndStanding(UUID entryId, Standing standing);

	Optional<MorningEntryEntity> findFirstByTellingReportedByAndStandingOrderByTellingReportedAtDescIdDesc(UUID carerId,
			Standing standing);

}
