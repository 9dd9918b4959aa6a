package measuredwalk;

import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;

class LoopOnH2Tests extends LoopContract {

	@DynamicPropertySource
	static void database(DynamicPropertyRegistry registry) {
		Databases.h2(registry);
	}

}
