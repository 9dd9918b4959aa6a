package measuredwalk.reading.amount;

import java.time.LocalDateTime;
import java.util.Set;

import measuredwalk.reading.MessageReader;
import measuredwalk.reading.OwnerMessage;
import measuredwalk.reading.Question;
import measuredwalk.reading.Reading;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static org.assertj.core.api.Assertions.assertThat;

/** Stiffness told of when nothing was asked. The messages are invented. */
class UnaskedStiffnessTests {

	private static final MessageReader READER = MessageReader.standard();

	@ParameterizedTest
	@CsvSource(delimiter = '|', textBlock = """
			worse than usual, stiff for 40 minutes               | 40
			still stiff, took 45 minutes to ease, worse          | 45
			Took him about half an hour to loosen up, very stiff | 30
			""")
	void howLongStiffnessLastedIsNoWalk(String text, double minutes) {
		Reading reading = read(text);
		assertThat(reading.stiffMinutes()).isEqualTo(minutes);
		assertThat(reading.walks()).isEmpty();
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', textBlock = """
			stiff, took 30 minutes to get home            | 30
			walked 20 minutes, stiff for 10 minutes after | 20
			""")
	void aWalkWithStiffnessStaysAWalk(String text, double minutes) {
		Reading reading = read(text);
		assertThat(reading.stiffMinutes()).isNull();
		assertThat(reading.walks()).singleElement().satisfies((walk) -> assertThat(walk.minutes()).isEqualTo(minutes));
	}

	private static Reading read(String text) {
		return READER.read(new OwnerMessage(text, Question.ANY, LocalDateTime.of(2025, 3, 3, 8, 0), null, Set.of()));
	}

}
