package measuredwalk.care;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;

import measuredwalk.speech.Speech;
import measuredwalk.speech.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import static org.assertj.core.api.Assertions.assertThat;

/** English usage: common practice, no source. */
class LongDayWishTests {

	/** A Wednesday. */
	private static final LocalDateTime NOW = LocalDateTime.of(2026, 3, 11, 18, 30);

	@ParameterizedTest
	@CsvSource(delimiter = '|', nullValues = "-",
			value = { "we have visitors on Saturday and will walk longer | 2026-03-14 | -",
					"big walk planned on Sunday, about 40 min | 2026-03-15 | 40",
					"We’ll do a longer walk tomorrow, an hour or so | 2026-03-12 | 60",
					"going to have a long day out with friends at the weekend | 2026-03-14 | -",
					"could we go for a longer walk on Friday? | 2026-03-13 | -",
					"we plan a long day the day after tomorrow | 2026-03-13 | -",
					"Family coming Wednesday, a big hike is planned | 2026-03-18 | -",
					"we want to walk more this evening, 35 minutes | 2026-03-11 | 35" })
	void readsADayThatIsPlannedLonger(String text, LocalDate day, Double minutes) {
		LongDayWish wish = LongDayWish.in(text, NOW, (words) -> words).orElseThrow();
		assertThat(wish.day()).isEqualTo(day);
		assertThat(wish.minutes()).isEqualTo(minutes);
		assertThat(wish.rest()).isEmpty();
	}

	/** Spanish usage: common practice, no source. */
	@ParameterizedTest
	@CsvSource(delimiter = '|', nullValues = "-",
			value = { "el sábado vienen visitas y vamos a caminar más | 2026-03-14 | -",
					"El domingo queremos hacer una excursión de 40 minutos | 2026-03-15 | 40",
					"Mañana vamos a dar un paseo más largo, de una hora | 2026-03-12 | 60",
					"este fin de semana haremos un paseo largo con amigos | 2026-03-14 | -",
					"¿podemos dar un paseo más largo el viernes? | 2026-03-13 | -",
					"queremos dar un paseo largo mañana | 2026-03-12 | -",
					"pasado mañana haremos una excursión | 2026-03-13 | -" })
	void readsADayThatIsPlannedLongerInSpanish(String text, LocalDate day, Double minutes) {
		LongDayWish wish = LongDayWish.in(text, NOW, LongDayWishTests::fromSpanish).orElseThrow();
		assertThat(wish.day()).isEqualTo(day);
		assertThat(wish.minutes()).isEqualTo(minutes);
	}

	@ParameterizedTest
	@ValueSource(strings = { "el sábado dimos un paseo largo, 40 minutos", "vienen visitas el sábado",
			"esta mañana fue un paseo largo, 30 minutos", "30 minutos, más largo que siempre",
			"mañana vamos al veterinario" })
	void leavesWhatWasWalkedInSpanish(String text) {
		assertThat(LongDayWish.in(text, NOW, LongDayWishTests::fromSpanish)).isEmpty();
	}

	private static String fromSpanish(String text) {
		return Ears.english(text, new Speech("es", Units.KILOMETRES, false), List.of("Luna"));
	}

	@ParameterizedTest
	@ValueSource(strings = { "we planned a longer walk on Sunday but came home after 15 minutes",
			"did a big walk on Saturday, 40 min", "visitors on Saturday", "could we do 40 minutes tomorrow?",
			"a long walk today, 40 minutes, she will sleep well", "she was slower than on Sunday",
			"30 minutes, longer than usual", "tomorrow the vet" })
	void leavesWhatWasWalkedAndWhatIsNoLongerDay(String text) {
		assertThat(LongDayWish.in(text, NOW, (words) -> words)).isEmpty();
	}

	@Test
	void whatElseTheMessageTellsIsLeftToBeHeard() {
		LongDayWish wish = LongDayWish
			.in("20 minutes today, all good. Visitors on Saturday, so we will walk longer! Slept well.", NOW,
					(words) -> words)
			.orElseThrow();
		assertThat(wish.rest()).isEqualTo("20 minutes today, all good. Slept well.");
	}

}
