package measuredwalk.reading.fuzz;

import com.code_intelligence.jazzer.api.FuzzedDataProvider;
import com.code_intelligence.jazzer.junit.FuzzTest;

/**
 * Coverage-guided search for texts that the reader cannot bear. Runs in the profile
 * {@code fuzz}; each text found is kept in {@code fixtures/reading/crashes}, which
 * {@link CrashesTests} replays ever after.
 */
class FuzzReader {

	@FuzzTest(maxDuration = "2m")
	void bearsAnyText(FuzzedDataProvider data) {
		String text = data.consumeBoolean() ? data.consumeRemainingAsString() : OwnerPieces.text(data);
		Crashes.keepIfItFails(text);
	}

}
