package measuredwalk.reading.load;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Set;

import measuredwalk.reading.LoadTold;
import measuredwalk.reading.MessageReader;
import measuredwalk.reading.OwnerMessage;
import measuredwalk.reading.Question;
import measuredwalk.reading.Reading;
import measuredwalk.signs.LoadKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

/** What made a walk harder; English usage is common practice, no source. */
class LoadReaderTests {

	private static Reading read(String text) {
		return MessageReader.standard()
			.read(new OwnerMessage(text, Question.WALK, LocalDateTime.of(2026, 3, 14, 18, 30), "Sandy", Set.of()));
	}

	private static List<LoadKind> told(String text) {
		return read(text).loads().stream().filter(LoadTold::present).map(LoadTold::kind).toList();
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|',
			value = { "20 mins up the hill | HILLS", "quite steep, 25 minutes | HILLS",
					"25 minutes, slowed on the slope | HILLS", "20 minutes, then up the steps to the church | STAIRS",
					"15 mins, three flights of stairs | STAIRS", "18 minutes, she jumped over a log | STAIRS",
					"half an hour on the beach | ROUGH_GROUND", "10 mins in deep snow | ROUGH_GROUND",
					"20 minutes along a muddy track | ROUGH_GROUND", "20 minutes, home at a trot | FAST_PACE",
					"brisk 25 | FAST_PACE", "a fast walk, 20 minutes | FAST_PACE",
					"15 minutes, chased a ball for a bit | PLAY", "20 mins and a bit of fetch | PLAY",
					"30 mins, it was a hot day | WARM_DAY", "20 minutes, 26 degrees | WARM_DAY",
					"12 min, 79 degrees out | WARM_DAY", "20 minutes, it was so hot | WARM_DAY" })
	void readsWhatMadeAWalkHarder(String text, LoadKind kind) {
		assertThat(told(text)).containsExactly(kind);
	}

	@ParameterizedTest
	@ValueSource(strings = { "20 minutes, no hills today", "we avoided the stairs, 20 minutes",
			"15 mins without the ball", "25 minutes, tomorrow the beach", "20 minutes, the beach tomorrow",
			"20 mins, we will try the hill next week", "20 minutes. Can he do hills?",
			"20 minutes, if he were on sand he would limp", "20 minutes, the other dog chased a ball",
			"20 minutes, last year he loved the beach", "20 minutes on our usual hill",
			"20 minutes up the hill as usual", "20 minutes on the flat", "20 minutes, stayed off the sand",
			"20 min instead of the beach", "15 minutes, kept away from the stairs" })
	void leavesOutWhatWasDeniedOrIsStillToComeOrUsualOrAnothers(String text) {
		assertThat(told(text)).isEmpty();
	}

	@ParameterizedTest
	@ValueSource(strings = { "he had the runs, 20 minutes", "20 minutes, then a few steps and he sat",
			"20 minutes, 3000 steps", "20 minutes, elbow like a tennis ball", "20 minutes, we ran out of tablets",
			"20 minutes, the leg is hot to touch", "Sandy did 20 minutes", "20 minutes, her temperature was 38.5 C",
			"20 minutes, a bit uneven behind", "20 minutes at 12 degrees", "20 minutes, breathing fast after",
			"20 minutes, she is over the hill like me", "20 minutes, slow on the stairs after" })
	void isNotMisledByWordsThatOnlySoundSo(String text) {
		assertThat(told(text)).isEmpty();
	}

	@Test
	void givesEachWalkItsOwn() {
		assertThat(read("20 minutes on the beach this morning. 15 tonight up the hill").loads())
			.containsExactly(new LoadTold(LoadKind.ROUGH_GROUND, true, 0), new LoadTold(LoadKind.HILLS, true, 1));
	}

	@Test
	void saysWhatWasDenied() {
		assertThat(read("no, it was all flat").loads()).containsExactly(new LoadTold(LoadKind.HILLS, false, null));
		assertThat(read("20 minutes, no stairs").loads()).containsExactly(new LoadTold(LoadKind.STAIRS, false, 0));
	}

	@Test
	void yesterdaysWalkHasYesterdaysGround() {
		assertThat(told("yesterday 20 minutes on the beach")).containsExactly(LoadKind.ROUGH_GROUND);
		assertThat(told("a bit stiff after the beach yesterday")).isEmpty();
	}

	@Test
	void aVeryLongMessageKeepsTheLoadsOfItsWalks() {
		String chatter = "We met the neighbours and talked. ".repeat(60);
		assertThat(read("20 minutes up the hill. " + chatter + "15 minutes on the beach tonight.").loads())
			.containsExactly(new LoadTold(LoadKind.HILLS, true, 0), new LoadTold(LoadKind.ROUGH_GROUND, true, 1));
	}

	@Test
	void aLineThatCannotBeUsedIsNamed() {
		assertThatIllegalStateException().isThrownBy(() -> LoadCues.of(List.of("[hills]", "hill|hill")))
			.withMessageContaining("line 2")
			.withMessageContaining("hill|hill");
	}

}
