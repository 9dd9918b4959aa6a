package measuredwalk.tolerance.simulation;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

class TallyTests {

	private static final Household STEADY = Household.draw(Worlds.MILDER, Kind.STEADY, 0, 1);

	@ParameterizedTest
	@CsvSource({ "20, 20, 0", "20, 10, 2.0794", "10, 20, 0.6931" })
	void oneMinuteTooManyCostsAsMuchAsThreeTooFew(double minutes, double best, double regret) {
		assertThat(Tally.regret(minutes, best)).isCloseTo(regret, within(1e-4));
	}

	@Test
	void aDayIsAboveWhenAnyOfItsWalksPassesTheTolerance() {
		assertThat(tally(day(1, 19, 20, 18)).above()).isEqualTo(1);
		assertThat(tally(day(1, 18, 20, 18)).above()).isZero();
	}

	@Test
	void aDayIsUnderBelowSevenTenthsOfTheBestSafeDose() {
		assertThat(tally(day(1, 13.9, 30, 30)).under()).isEqualTo(1);
		assertThat(tally(day(1, 14.1, 30, 30)).under()).isZero();
	}

	@Test
	void calibrationComparesTheChancesOfOneWalkWithWhatOneWalkWouldHaveMet() {
		Tally tally = tally(predicted(21, 20, 0.3), predicted(19, 20, 0.1));
		assertThat(tally.predictedMinusObserved()).isCloseTo(0.2 - 0.5, within(1e-12));
	}

	@Test
	void aPolicyThatGivesNoChancesHasNoCalibration() {
		assertThat(tally(day(1, 10, 20, 20)).predictedMinusObserved()).isNaN();
	}

	@ParameterizedTest
	@CsvSource({ "0, 0", "3, 3", "50, 10" })
	void comingDownIsCountedFromTheDropToTheFirstSuggestionWithinTheNewTolerance(int daysTooHigh, double counted) {
		List<TrialDay> fromDrop = new ArrayList<>();
		for (int day = 0; day < 10; day++) {
			fromDrop.add(day(day, (day < daysTooHigh) ? 25 : 15, 20, 20));
		}
		assertThat(Tally.daysToComeDown(fromDrop)).isEqualTo(counted);
	}

	@Test
	void theWorstKindStandsForItself() {
		Figures figures = Figures.of(Map.of(Kind.STEADY, tally(day(1, 19, 20, 20), day(2, 19, 20, 20)), Kind.FLARING,
				tally(day(1, 19, 20, 20), day(2, 21, 20, 20))));
		assertThat(figures.above()).isEqualTo(0.25);
		assertThat(figures.worstAbove()).isEqualTo(0.5);
		assertThat(figures.values()).hasSameSizeAs(Figures.NAMES);
	}

	private static Tally tally(TrialDay... days) {
		Tally tally = new Tally();
		tally.add(STEADY, List.of(days));
		return tally;
	}

	private static TrialDay day(int day, double minutes, double tolerance, double limit) {
		return new TrialDay(day, Dose.of(2, minutes), tolerance, limit, limit, 20);
	}

	private static TrialDay predicted(double minutes, double tolerance, double chance) {
		return new TrialDay(1, new Dose(1, minutes, chance, 15, 20, 25, ""), tolerance, tolerance, tolerance, 18);
	}

}
