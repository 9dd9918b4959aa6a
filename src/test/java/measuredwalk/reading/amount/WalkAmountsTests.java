package measuredwalk.reading.amount;

import java.time.LocalDateTime;
import java.util.Set;
import java.util.stream.Collectors;

import measuredwalk.reading.MessageReader;
import measuredwalk.reading.OwnerMessage;
import measuredwalk.reading.Question;
import measuredwalk.reading.Reading;
import measuredwalk.signs.Sign;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import static org.assertj.core.api.Assertions.assertThat;

/** Which numbers of a message are the walk's. The messages are invented. */
class WalkAmountsTests {

	private static final MessageReader READER = MessageReader.standard();

	@ParameterizedTest
	@CsvSource(delimiter = '|', textBlock = """
			15 then another 10 after a sit                                    | 25
			did 15 mins had a breather then another 5                         | 20
			10 mins out, 5 min rest, 10 mins back                             | 20
			I took him for 20 then Pete took him for another 20               | 20 20
			12 min then another 15 after tea                                  | 12 15
			did her 20 this morning and same again tonight                    | 20 20
			2 laps of the park each about 8 mins                              | 8 8
			am 15 pm 20                                                       | 15 20
			We were out 14 minutes (07:31 to 07:45)                           | 14
			out the door 1610 back in 1645                                    | 35
			Left at 11, sat down outside number 40, got home 11.25            | 25
			2.3 miles according to my watch, 51:20                            | 51.3
			""")
	void addsPartsOfOneWalkAndKeepsTwoWalksApart(String text, String minutes) {
		assertThat(minutes(text)).isEqualTo(minutes);
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', textBlock = """
			ate minutes then she sat down            | 8
			about for minutes                        | 4
			fourty five mins                         | 45
			tweny minutes                            | 20
			30 mins, she could have gone for miles   | 30
			""")
	void hearsNumbersInWhatDictationAndThumbsWrote(String text, String minutes) {
		assertThat(minutes(text)).isEqualTo(minutes);
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', textBlock = """
			20 mins w the new harness (size 4)                          | 20
			Duration 38 min, air 11 degrees, pulse of owner 96          | 38
			13 Elm Row to the post box and back, 15 minutes             | 15
			40 mins with a 10 minute stop at the cafe                   | 40
			so I only got him out about seven and we did fifteen minutes | 15
			I had a coffee for half an hour, walk itself was 20 mins    | 20
			30 mins, now he has been panting for an hour                | 30
			Fifteen. Fifty would have killed him.                       | 15
			plan said 15, stuck to it                                   | 15
			the wife says 20, I say 30, call it 25                      | 25
			I said 30 earlier meant 13                                  | 13
			no wait it was 25 min                                       | 25
			""")
	void leavesOutWhatIsNoneOfTheWalk(String text, String minutes) {
		assertThat(minutes(text)).isEqualTo(minutes);
	}

	@ParameterizedTest
	@ValueSource(strings = { "gonna do 30 later if it dries up", "on our way out now, back in 20",
			"none today, she had 40 mins yesterday", "is 25 too much for her" })
	void takesNoPlanForAWalk(String text) {
		assertThat(minutes(text)).isEmpty();
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', textBlock = """
			20 mins. ok until 15 then stiff                     | 15
			fine for 25 then the back end went wobbly, 35 total | 25
			slowed after a quarter of an hour, out 35           | 15
			20 minutes. Limped from the 12th minute.            | 12
			limped for the last five minutes of 25              | 20
			""")
	void findsTheMinuteASignBegan(String text, double minute) {
		assertThat(read(text).signs()).extracting(Sign::onsetMinute).contains(minute);
	}

	@ParameterizedTest
	@ValueSource(strings = { "[sticker]", "On a marché 20 minutes ce matin", "Wandelde 20 minuten, liep goed" })
	void understandsNeitherPlaceholdersNorOtherLanguages(String text) {
		assertThat(read(text).understood()).isFalse();
	}

	private static String minutes(String text) {
		return read(text).walks()
			.stream()
			.filter((walk) -> walk.minutes() != null)
			.map((walk) -> String.valueOf(walk.minutes()).replaceAll("\\.0$", ""))
			.collect(Collectors.joining(" "));
	}

	private static Reading read(String text) {
		return READER
			.read(new OwnerMessage(text, Question.WALK, LocalDateTime.of(2026, 3, 14, 18, 30), null, Set.of()));
	}

}
