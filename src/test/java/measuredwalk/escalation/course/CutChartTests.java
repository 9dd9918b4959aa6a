package measuredwalk.escalation.course;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;

import measuredwalk.escalation.ReviewDesign;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static org.assertj.core.api.Assertions.assertThat;

class CutChartTests {

	private static final CutChart CHART = new CutChart(ReviewDesign.KEENER.cutLimit());

	private static List<Double> days(int before, double then, int after, double now) {
		List<Double> days = new ArrayList<>(Collections.nCopies(before, then));
		days.addAll(Collections.nCopies(after, now));
		return days;
	}

	/**
	 * By hand: each day adds ln(30 / minutes), at most 0.3, less 0.11; 1.0 is the limit.
	 */
	@ParameterizedTest
	@CsvSource({ "24, 8, false", "24, 9, true", "20, 5, false", "20, 6, true", "27, 40, false", "30, 40, false",
			"36, 40, false" })
	void aLastingLossAlarmsWhenItsSumPassesTheLimit(double now, int days, boolean alarm) {
		assertThat(CHART.level(days(60, 30, days, now)) >= 1).isEqualTo(alarm);
	}

	@Test
	void aFlareOfFiveDaysDoesNotAlarm() {
		List<Double> days = days(60, 30, 5, 20);
		days.addAll(Collections.nCopies(20, 30.0));
		assertThat(IntStream.rangeClosed(1, days.size())
			.mapToDouble((until) -> CHART.level(days.subList(0, until)))
			.max()
			.orElseThrow()).isLessThan(1);
	}

	@Test
	void withoutFourWeeksThereIsNothingToHoldADayAgainst() {
		assertThat(CHART.level(days(14, 30, 13, 5))).isZero();
		assertThat(CHART.level(List.of())).isZero();
	}

	@Test
	void theFindingNamesBothTolerancesAndBeginsAgainWithAMedicine() {
		LocalDate first = LocalDate.of(2026, 1, 1);
		List<Double> medians = days(60, 30, 12, 22);
		List<BeliefDay> beliefs = IntStream.range(0, medians.size())
			.mapToObj((i) -> new BeliefDay(first.plusDays(i), medians.get(i)))
			.toList();
		DogCourse course = DogCourse.of(List.of(), List.of(), first, first.plusDays(71))
			.withDesign(ReviewDesign.KEENER)
			.withBeliefs(beliefs);
		assertThat(StayingCut.in(course).orElseThrow().reason())
			.startsWith("Walks cut and staying cut: the tolerance is put at 22 min, 30 min in the weeks before");
		assertThat(StayingCut.in(course.withMedicineChangedOn(first.plusDays(58)))).isEmpty();
	}

}
