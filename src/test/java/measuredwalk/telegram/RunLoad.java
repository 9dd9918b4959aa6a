package measuredwalk.telegram;

import org.junit.jupiter.api.Test;

/** Measures the whole application under load; run by the profile {@code load}. */
class RunLoad {

	@Test
	void printsWhatItMeasures() throws Exception {
		if (System.getProperty("load.run", "chats").equals("burst")) {
			MorningBurst.measureOnce();
		}
		else {
			ChatLoad.measureOnce();
		}
	}

}
