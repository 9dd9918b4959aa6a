package measuredwalk;

import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;

class LoopOnPostgresTests extends LoopContract {

	@DynamicPropertySource
	static void database(DynamicPropertyRegistry registry) {
		Databases.postgres(registry);
	}

}
