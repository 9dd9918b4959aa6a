package measuredwalk.household;

import org.springframework.data.jpa.repository.JpaRepository;

interface JoinCodeRows extends JpaRepository<JoinCodeEntity, String> {

}
