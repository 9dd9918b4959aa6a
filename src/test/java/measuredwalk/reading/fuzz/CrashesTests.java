package measuredwalk.reading.fuzz;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import static org.assertj.core.api.Assertions.assertThat;

/** Texts that once failed, and strange ones by hand. */
class CrashesTests {

	@Test
	void everyTextThatOnceFailedIsReadSoundly() throws IOException {
		for (Path file : Crashes.files()) {
			SoundReading.check(Crashes.text(file));
		}
	}

	@ParameterizedTest
	@ValueSource(strings = { "", " ", "\\u0000", "\\ud83d", "\\udc3e 25 min", "a\\u0301\\u0301\\u0301", "\\ufeff25 min",
			"25\\u200bmin", "\\u202e25 nim", "\\u0665\\u0660 min", "\\u2460 min", "1/0 min", "-25 min", "1e309 min",
			"0.0000000001 km", "25:61 to 99:99", "((((((((((", "'''''\"\"\"\"\"", "x x x x 2 x 2 x 2 x 2 min",
			"between between 5 and and 10", "no no no not never limp no", "half half half a half hour half" })
	void aStrangeTextIsReadSoundly(String escaped) {
		SoundReading.check(Crashes.unescaped(escaped));
	}

	@Test
	void aHugeTextIsReadSoundly() {
		for (String piece : List.of("1", "a", " ", "no ", "25 min ", "limping and ", "\uD83D\uDC3E", ".", "\n")) {
			SoundReading.check(piece.repeat(8_000 / piece.length()));
		}
	}

	@Test
	void aKeptTextComesBackAsItWas() {
		String text = "20' \\ \n \uD83D caf\u00e9 ";
		assertThat(Crashes.unescaped(Crashes.escaped(text).lines().findFirst().orElseThrow())).isEqualTo(text);
	}

}
