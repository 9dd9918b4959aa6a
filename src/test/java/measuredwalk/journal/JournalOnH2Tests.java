package measuredwalk.journal;

import measuredwalk.Databases;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;

class JournalOnH2Tests extends JournalContract {

	@DynamicPropertySource
	static void database(DynamicPropertyRegistry registry) {
		Databases.h2(registry);
	}

}
