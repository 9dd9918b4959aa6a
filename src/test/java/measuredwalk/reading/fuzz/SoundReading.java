package measuredwalk.reading.fuzz;

import java.time.LocalDateTime;
import java.util.Set;

import measuredwalk.reading.Level;
import measuredwalk.reading.MessageReader;
import measuredwalk.reading.OwnerMessage;
import measuredwalk.reading.Question;
import measuredwalk.reading.Reading;
import measuredwalk.reading.WalkTold;
import measuredwalk.signs.Sign;
import org.jspecify.annotations.Nullable;

import static org.assertj.core.api.Assertions.assertThat;

/** What must hold of the reading of any text whatever, were it only noise. */
public final class SoundReading {

	private static final MessageReader READER = MessageReader.standard();

	private static final LocalDateTime NOW = LocalDateTime.of(2026, 3, 14, 18, 30);

	private SoundReading() {
	}

	/**
	 * Reads a text as the answer to every question and checks what was read.
	 * @param text any text
	 * @throws AssertionError when a reading contradicts itself
	 */
	public static void check(String text) {
		for (Question question : Question.values()) {
			check(READER.read(new OwnerMessage(text, question, NOW, "Bracken", Set.of("nsaid"))));
		}
		int middle = text.length() / 2;
		assertThat(READER.context(text, middle, Math.min(text.length(), middle + 4))).isNotNull();
	}

	private static void check(Reading reading) {
		reading.walks().forEach(SoundReading::check);
		reading.signs().forEach(SoundReading::check);
		checkMinutes(reading.stiffMinutes());
		assertThat(reading.levelReasons().isEmpty()).isEqualTo(reading.level() == Level.NONE);
		if (!reading.understood()) {
			assertThat(reading.walks()).isEmpty();
			assertThat(reading.signs()).isEmpty();
		}
	}

	private static void check(WalkTold walk) {
		checkMinutes(walk.minutes());
		checkMinutes(walk.minutesLow());
		checkMinutes(walk.minutesHigh());
		checkMinutes(walk.distanceMetres());
		if (walk.minutes() != null && walk.minutesLow() != null) {
			assertThat(walk.minutesLow()).isLessThanOrEqualTo(walk.minutes());
		}
		if (walk.minutes() != null && walk.minutesHigh() != null) {
			assertThat(walk.minutesHigh()).isGreaterThanOrEqualTo(walk.minutes());
		}
	}

	private static void check(Sign sign) {
		checkMinutes(sign.onsetMinute());
		if (!sign.present()) {
			assertThat(sign.onsetMinute()).as("onset of a denied %s", sign.kind()).isNull();
		}
	}

	private static void checkMinutes(@Nullable Double amount) {
		if (amount != null) {
			assertThat(amount).isFinite().isNotNegative();
		}
	}

}
