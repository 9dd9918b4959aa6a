package measuredwalk;

import org.junit.jupiter.api.Test;
import org.springframework.modulith.core.ApplicationModules;

class ModulesTests {

	@Test
	void noModuleSeesWhatItMayNot() {
		ApplicationModules.of(MeasuredWalk.class).verify();
	}

}
