package measuredwalk.conversations;

import java.io.StringReader;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

class ScriptReaderTests {

	private static final String GOOD = """
			conversation: after-walk
			version: 1
			reads: walk
			closes-after: 1h 30m
			steps:
			  - step: how-long
			    settles: [walk-amount]
			    ask: How long was it, {dog}?
			    ask-again: How many minutes?
			""";

	private static Script read(String text) {
		return ScriptReader.script(YamlMap.read("after-walk.yaml", new StringReader(text)));
	}

	@Test
	void aGoodFileIsRead() {
		Script script = read(GOOD);
		assertThat(script.closesAfter()).hasMinutes(90);
		assertThat(script.steps()).singleElement().extracting(Step::id).isEqualTo("how-long");
	}

	@ParameterizedTest(name = "{0} -> {1}: {2}")
	@CsvSource(delimiter = '|', quoteCharacter = '"', textBlock = """
			version: 1          | version: one        | line 2: 'version' must be a whole number
			reads: walk         | reads: walks        | line 3: 'walks' is not one of walk, morning, any
			closes-after: 1h 30m| closes-after: soon  | line 4: 'closes-after' must be a length of time
			[walk-amount]       | [walk-lenght]       | line 7: 'walk-lenght' is not one of
			{dog}               | {cat}               | line 8: '{cat}' is not known here
			ask-again:          | ask-agian:          | line 6: 'ask-again' is missing
			version: 1          | wersion: 1          | 'version' is missing
			[walk-amount]       | []                  | line 7: a step must settle something
			[walk-amount]       | [walk-amount        | line 8
			""")
	void aWrongFileIsRefusedWithFileLineAndFix(String good, String wrong, String complaint) {
		assertThatExceptionOfType(ConversationFileProblem.class).isThrownBy(() -> read(GOOD.replace(good, wrong)))
			.withMessageStartingWith("after-walk.yaml, line ")
			.withMessageContaining(complaint);
	}

	@Test
	void aFileThatUnfoldsToBillionsOfLinesIsRefused() {
		StringBuilder bomb = new StringBuilder("a0: &a0 [x, x]\n");
		for (int level = 1; level < 60; level++) {
			bomb.append("a%d: &a%d [*a%d, *a%d]\n".formatted(level, level, level - 1, level - 1));
		}
		assertThatExceptionOfType(ConversationFileProblem.class).isThrownBy(() -> read(bomb.toString()))
			.withMessageContaining("after-walk.yaml");
	}

	@Test
	void anUnknownKeyIsNamedWithThoseThatAreKnown() {
		assertThatExceptionOfType(ConversationFileProblem.class).isThrownBy(() -> read(GOOD + "    colour: red\n"))
			.withMessage("after-walk.yaml, line 10: 'colour' is not known here; known are step, settles, only-if, ask,"
					+ " ask-again, choices.");
	}

	@Test
	void manyAliasesAreRefused() {
		String bomb = "a: &a [x, x]\nb: &b [*a, *a]\nc: [*b, *b]\n" + GOOD;
		assertThatExceptionOfType(ConversationFileProblem.class).isThrownBy(() -> read(bomb));
	}

}
