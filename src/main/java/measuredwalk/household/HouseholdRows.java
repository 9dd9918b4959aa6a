package measuredwalk.household;

import java.util.UUID;

import org.springframework.data.jpa.repository.JpaRepository;

interface HouseholdRows extends JpaRepository<HouseholdEntity, UUID> {

}
