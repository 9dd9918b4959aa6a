package measuredwalk.care;

import java.time.DayOfWeek;
import java.time.LocalTime;
import java.util.Arrays;
import java.util.Set;

import measuredwalk.household.Dogs;
import measuredwalk.household.Hours;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import static org.assertj.core.api.Assertions.assertThat;

class HoursWishTests {

	private static final Hours USUAL = Dogs.in("UTC", LocalTime.of(7, 30), 20).household().hours();

	@ParameterizedTest
	@CsvSource({ "mornings at 8,08:00", "Morning 7.15 please,07:15", "mornings at 6:45am,06:45",
			"could you do mornings around 9,09:00" })
	void theMorningHourIsRead(String words, LocalTime morning) {
		assertThat(HoursWish.read(words, USUAL).hours()).isEqualTo(USUAL.withMorningAt(morning));
	}

	@ParameterizedTest
	@CsvSource({ "walks at 8 and 17:30,08:00 17:30", "'walks at 7.30am, 1pm and 6pm',07:30 13:00 18:00",
			"walks at 8 and 5,08:00 17:00", "walk at 16:00,16:00" })
	void walkHoursAreRead(String words, String times) {
		assertThat(HoursWish.read(words, USUAL).walks())
			.containsExactlyElementsOf(Arrays.stream(times.split(" ")).map(LocalTime::parse).toList());
	}

	@Test
	void daysOffAreReadAndTakenBack() {
		Hours off = HoursWish.read("not on Saturdays and Sundays", USUAL).hours();
		assertThat(off.daysOff()).containsExactlyInAnyOrder(DayOfWeek.SATURDAY, DayOfWeek.SUNDAY);
		assertThat(HoursWish.read("not at weekends", USUAL).hours()).isEqualTo(off);
		assertThat(HoursWish.read("on Saturdays again", off).hours().daysOff()).isEqualTo(Set.of(DayOfWeek.SUNDAY));
		assertThat(HoursWish.read("every day", off).hours()).isEqualTo(USUAL);
	}

	@Test
	void walkQuestionsCanBeEndedAndBegunAgain() {
		Hours without = HoursWish.read("no walk questions", USUAL).hours();
		assertThat(without.walkQuestions()).isFalse();
		assertThat(HoursWish.read("don't ask about walks", USUAL).hours()).isEqualTo(without);
		assertThat(HoursWish.read("walk questions please", without).hours()).isEqualTo(USUAL);
		assertThat(HoursWish.read("walks at 9", without).hours()).isEqualTo(USUAL);
	}

	@Test
	void severalWishesInOneMessageAllCount() {
		HoursWish wish = HoursWish.read("mornings at 8, walks at 9 and 17:30, quiet from 10pm to 6am, not on Mondays",
				USUAL);
		assertThat(wish.hours()).isEqualTo(USUAL.withMorningAt(LocalTime.of(8, 0))
			.withQuiet(LocalTime.of(22, 0), LocalTime.of(6, 0))
			.withDaysOff(Set.of(DayOfWeek.MONDAY)));
		assertThat(wish.walks()).containsExactly(LocalTime.of(9, 0), LocalTime.of(17, 30));
	}

	@ParameterizedTest
	@ValueSource(strings = { "hello", "mornings at 29", "mornings at 9pm", "later", "walks at 77", "20 minutes, fine" })
	void whatIsNoWishChangesNothing(String words) {
		HoursWish wish = HoursWish.read(words, USUAL);
		assertThat(wish.understood()).isFalse();
		assertThat(wish.hours()).isEqualTo(USUAL);
	}

	@Test
	void whatHoldsAlreadyIsUnderstood() {
		assertThat(HoursWish.read("mornings at 7:30", USUAL).understood()).isTrue();
	}

}
