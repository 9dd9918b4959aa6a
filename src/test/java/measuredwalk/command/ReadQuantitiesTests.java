package measuredwalk.command;

import java.io.BufferedReader;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static org.assertj.core.api.Assertions.assertThat;

class ReadQuantitiesTests {

	@Test
	void answersEveryKindInItsOwnList() {
		assertThat(answer("20 mins, 2 km, 20C")).isEqualTo("{'id':'q1','durations':[{'seconds':1200.0}],"
				+ "'distances':[{'metres':2000.0}],'numbers':[],'times':[],'timeRanges':[],"
				+ "'temperatures':[{'value':20.0,'unit':'C'}]}");
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
			15-20 mins            | {'seconds':1050.0,'low':900.0,'high':1200.0}
			at least 20 mins      | {'seconds':1200.0,'low':1200.0,'high':null}
			under 2 miles         | {'metres':3218.688,'low':null,'high':3218.688}
			between 20 and 30     | {'value':25.0,'low':20.0,'high':30.0}
			left 7.10 back 7.35   | {'start':'07:10:00','end':'07:35:00','seconds':1500}
			half nine             | {'time':'09:30:00'
			2 x 10 min            | [{'seconds':600.0},{'seconds':600.0}]
			""")
	void tellsRangesWithTheirEndsBesideTheMiddle(String text, String part) {
		assertThat(answer(text)).contains(part);
	}

	@Test
	void answersALineThatIsNoJsonAndGoesOn() throws IOException {
		ByteArrayOutputStream bytes = new ByteArrayOutputStream();
		String lines = "{nonsense\n{\"id\":7,\"text\":\"5 mins\"}\n{\"id\":8}\n{\"id\":9,\"text\":\"5\",\"now\":\"soon\"}\n[]\n";
		new ReadQuantities().run(new BufferedReader(new StringReader(lines)),
				new PrintStream(bytes, true, StandardCharsets.UTF_8));
		String[] answers = bytes.toString(StandardCharsets.UTF_8).split(System.lineSeparator());
		assertThat(answers).hasSize(5);
		assertThat(answers[0]).startsWith("{\"id\":null,\"error\":");
		assertThat(answers[1]).startsWith("{\"id\":7,\"durations\":[{\"seconds\":300.0}]");
		assertThat(answers[2]).startsWith("{\"id\":8,\"error\":").contains("text");
		assertThat(answers[3]).startsWith("{\"id\":9,\"error\":").contains("now");
		assertThat(answers[4]).startsWith("{\"id\":null,\"error\":");
	}

	private static String answer(String text) {
		return new ReadQuantities()
			.answer("{\"id\":\"q1\",\"text\":\"%s\",\"now\":\"2026-03-14T18:30\"}".formatted(text))
			.replace('"', '\'');
	}

}
