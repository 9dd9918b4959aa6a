package measuredwalk.journal;

import measuredwalk.Databases;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;

class JournalOnPostgresTests extends JournalContract {

	@DynamicPropertySource
	static void database(DynamicPropertyRegistry registry) {
		Databases.postgres(registry);
	}

}
