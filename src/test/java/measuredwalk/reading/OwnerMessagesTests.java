package measuredwalk.reading;

import java.nio.file.Path;
import java.util.List;

import measuredwalk.reading.score.LabelledMessage;
import measuredwalk.reading.score.Scorecard;
import measuredwalk.reading.score.Scorecard.Field;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static org.assertj.core.api.Assertions.assertThat;

/** What the reader reaches on labelled messages must not get lost again. */
class OwnerMessagesTests {

	private static final MessageReader READER = MessageReader.standard();

	private static final Scorecard SAMPLE = scored("owner-sample.jsonl");

	private static final Scorecard DEVELOP = scored("develop.jsonl");

	private static final Scorecard PLAIN = scored("plain.jsonl");

	private static final Scorecard AMOUNTS = scored("amounts.jsonl");

	private static final Scorecard EMERGENCIES = scored("emergencies.jsonl");

	private static final Scorecard LOOKALIKES = scored("no-emergencies.jsonl");

	private static final Scorecard FRESH = scored("fresh-emergencies.jsonl");

	private static final Scorecard FRESH_LOOKALIKES = scored("fresh-no-emergencies.jsonl");

	private static final Scorecard FRESH_URGENT = scored("fresh-urgent.jsonl");

	private static Scorecard scored(String file) {
		List<LabelledMessage> messages = LabelledMessage.read(Path.of("fixtures", "reading", file));
		return Scorecard.of(READER, messages);
	}

	@ParameterizedTest
	@CsvSource({ "WALK_MINUTES, 0.99", "DISTANCE, 0.99", "SIGNS, 0.97", "DENIED_SIGNS, 0.96", "SIDE, 0.96",
			"LIMB, 0.96", "WHEN, 0.96", "SEVERITY, 0.96", "ONSET, 0.95", "OVERALL, 0.96", "URGENT, 0.99",
			"NOT_UNDERSTOOD, 0.97" })
	void readsTheSampleAsWellAsItDid(Field field, double reached) {
		assertThat(SAMPLE.tally(field).f1()).isGreaterThanOrEqualTo(reached);
	}

	@ParameterizedTest
	@CsvSource({ "WALK_MINUTES, 0.96", "FIRST_WALK_MINUTES, 0.97", "DISTANCE, 0.97", "RELATIVE, 0.99", "SIGNS, 0.96",
			"DENIED_SIGNS, 0.94", "SIDE, 0.93", "LIMB, 0.93", "WHEN, 0.80", "SEVERITY, 0.87", "ONSET, 0.93",
			"STIFF_MINUTES, 0.99", "OVERALL, 0.87" })
	void readsTheMessagesOfOtherAuthorsAsWellAsItDid(Field field, double reached) {
		assertThat(DEVELOP.tally(field).f1()).isGreaterThanOrEqualTo(reached);
	}

	@ParameterizedTest
	@CsvSource({ "WALK_MINUTES, 0.97", "FIRST_WALK_MINUTES, 0.97", "DISTANCE, 0.97", "SIGNS, 0.96",
			"DENIED_SIGNS, 0.96", "SIDE, 0.95", "LIMB, 0.95", "WHEN, 0.80", "SEVERITY, 0.90", "ONSET, 0.93",
			"URGENT, 0.95" })
	void readsPlainEverydayMessagesAsWellAsItDid(Field field, double reached) {
		assertThat(PLAIN.tally(field).f1()).isGreaterThanOrEqualTo(reached);
	}

	@ParameterizedTest
	@CsvSource({ "WALK_MINUTES, 0.93", "FIRST_WALK_MINUTES, 0.95", "DISTANCE, 0.95", "SIGNS, 0.95",
			"DENIED_SIGNS, 0.92", "SIDE, 0.97", "LIMB, 0.95", "WHEN, 0.88", "SEVERITY, 0.96", "ONSET, 0.92",
			"STIFF_MINUTES, 0.93" })
	void readsTheAmountsOfAFourthAuthorAsWellAsItDid(Field field, double reached) {
		assertThat(AMOUNTS.tally(field).f1()).isGreaterThanOrEqualTo(reached);
	}

	@Test
	void missesNoEmergency() {
		assertThat(EMERGENCIES.tally(Field.URGENT).recall()).isEqualTo(1);
		assertThat(DEVELOP.tally(Field.URGENT).recall()).isEqualTo(1);
		assertThat(SAMPLE.tally(Field.URGENT).recall()).isEqualTo(1);
		assertThat(PLAIN.tally(Field.URGENT).recall()).isEqualTo(1);
	}

	@Test
	void raisesNoAlarmForWhatOnlyLooksLikeAnEmergency() {
		assertThat(LOOKALIKES.tally(Field.URGENT).precision()).isEqualTo(1);
		assertThat(DEVELOP.tally(Field.URGENT).precision()).isGreaterThanOrEqualTo(0.95);
	}

	@Test
	void findsAsManyEmergenciesInFreshWordingAsItDid() {
		assertThat(FRESH.tally(Field.URGENT).recall()).isGreaterThanOrEqualTo(0.89);
		assertThat(FRESH_LOOKALIKES.tally(Field.LEVEL).labels()).isEqualTo(160);
	}

	@Test
	void isNotAlarmedMoreOftenByFreshLookalikesThanItWas() {
		long alarms = FRESH_LOOKALIKES.failures().stream().filter((line) -> line.contains("URGENT")).count();
		assertThat(alarms).isLessThanOrEqualTo(18);
	}

	@Test
	void findsTheUrgentOnesOfAFifthAuthorAsItDid() {
		assertThat(FRESH_URGENT.tally(Field.URGENT).labels()).isEqualTo(160);
		assertThat(FRESH_URGENT.tally(Field.URGENT).recall()).isGreaterThanOrEqualTo(0.99);
		assertThat(FRESH_URGENT.tally(Field.URGENT).precision()).isGreaterThanOrEqualTo(0.98);
	}

}
