package measuredwalk.conversations;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;

import org.springframework.data.jpa.repository.JpaRepository;

interface CheckInRows extends JpaRepository<CheckInEntity, UUID> {

	List<CheckInEntity> findByChatIdAndStateOrderByOpenedAtDesc(long chatId, CheckInEntity.State state);

	List<CheckInEntity> findByDogIdAndScriptIdAndAboutDateGreaterThanEqual(UUID dogId, String scriptId, LocalDate from);

	boolean existsByDogIdAndScriptIdAndAboutDate(UUID dogId, String scriptId, LocalDate aboutDate);

}
