package measuredwalk.reading.level;

import java.time.LocalDateTime;
import java.util.Set;

import measuredwalk.reading.Level;
import measuredwalk.reading.MessageReader;
import measuredwalk.reading.OwnerMessage;
import measuredwalk.reading.Question;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import static org.assertj.core.api.Assertions.assertThat;

class WordsOfPlansTests {

	private static Level level(String text) {
		return MessageReader.standard()
			.read(new OwnerMessage(text, Question.ANY, LocalDateTime.of(2026, 3, 11, 18, 30), "Bramble", Set.of()))
			.level();
	}

	@ParameterizedTest
	@ValueSource(strings = { "we have visitors on Saturday and will walk longer",
			"we have visitors tomorrow and will walk longer", "we have guests on Sunday and will walk Bramble longer",
			"I have friends coming over at the weekend and we will hike" })
	void aPlanIsNotUrgentForSoundingLikeWhatIs(String text) {
		assertThat(level(text)).isEqualTo(Level.NONE);
	}

	@ParameterizedTest
	@ValueSource(strings = { "we have visitors on Saturday and Bramble can not get up",
			"going to plan a longer walk but Bramble has collapsed" })
	void oneWordMoreAndTheMessageIsHeardAsAlways(String text) {
		assertThat(level(text)).isEqualTo(Level.EMERGENCY);
	}

}
