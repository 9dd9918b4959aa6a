package measuredwalk.tolerance.simulation;

import java.util.List;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

class BodyTests {

	private static final Soreness SORENESS = new Soreness(0.6, 1, 0, 0);

	@Test
	void theQualityOfADayStaysByTheDaysMemory() {
		Body body = new Body(30, new HeavyTailedDay(0.15, 0.05), -0.2, 0.5, 0.05, new Fatigue(0, 3), SORENESS, 0, 0);
		double[] qualities = new double[20_000];
		BodyState state = BodyState.FRESH;
		for (int day = 0; day < qualities.length; day++) {
			double innovation = body.day().innovation(Luck.of(5).on(Topic.DAY, day));
			state = body.dayLater(state, innovation, new DayLoads(0.4, 10, 9), Luck.of(6).on(Topic.FLARE, day));
			qualities[day] = state.quality();
		}
		assertThat(autocorrelation(qualities)).isCloseTo(0.5, within(0.03));
	}

	@Test
	void irritationIsFedByOverloadAndHealsByItsShare() {
		double irritated = SORENESS.irritationNext(0, 1.5);
		assertThat(irritated).isCloseTo(0.4 * Math.log(1.5), within(1e-12));
		assertThat(SORENESS.irritationNext(irritated, 0.8)).isCloseTo(0.4 * irritated, within(1e-12));
	}

	@Test
	void irritationNeverTakesMoreThanHalf() {
		double irritation = 0;
		for (int day = 0; day < 30; day++) {
			irritation = SORENESS.irritationNext(irritation, 4);
		}
		assertThat(irritation).isLessThanOrEqualTo(Math.log(2));
	}

	@Test
	void everyDogOfEveryWorldHealsWithinTheStatedRates() {
		for (World world : List.of(Worlds.MILDER, Worlds.HARDER)) {
			assertThat(IntStream.range(0, 50)
				.mapToDouble((number) -> Household.draw(world, Kind.STEADY, number, 3).body().soreness().healing()))
				.allMatch((healing) -> healing >= 0.50 && healing <= 0.75);
		}
	}

	@ParameterizedTest
	@CsvSource({ "1.0, 0.002", "0.5, 0.002", "0.2, -0.003", "0, -0.003" })
	void useTrainsAndIdlenessCosts(double loadRatio, double perDay) {
		assertThat(Fitness.next(0, loadRatio)).isCloseTo(perDay, within(1e-12));
	}

	@Test
	void fitnessIsBounded() {
		assertThat(Fitness.next(0.25, 1)).isEqualTo(0.25);
		assertThat(Fitness.next(-0.40, 0)).isEqualTo(-0.40);
	}

	@Test
	void flaresLastAsLongAsInPeopleAndThenAreOver() {
		// Thomas 2021, Osteoarthritis Cartilage: median 5 days, quartiles 3 and 8.
		Luck luck = Luck.of(21);
		double[] days = IntStream.range(0, 8000).mapToDouble((number) -> Flare.begin(luck).days()).toArray();
		assertThat(Quantiles.of(days, 0.25)).isCloseTo(3, within(0.2));
		assertThat(Quantiles.of(days, 0.50)).isCloseTo(5, within(0.2));
		assertThat(Quantiles.of(days, 0.75)).isCloseTo(8, within(0.4));
		Flare flare = new Flare(0.5, 4, 0);
		assertThat(flare.logShift()).isEqualTo(0.5);
		assertThat(flare.dayLater().logShift()).isBetween(0.3, 0.5);
		assertThat(flare.dayLater().dayLater().dayLater().dayLater().logShift()).isZero();
	}

	@Test
	void twoWalksOfTheMostMinutesJustReachTheTolerance() {
		Morning morning = new Morning(Math.log(30), -0.2, new Fatigue(0.5, 3), 24, -6.5);
		double most = morning.mostMinutes(30, 2);
		double first = most + morning.carriedFromYesterday(8);
		double second = most + morning.fatigue().left(first, 9.5);
		assertThat(Math.max(first, second)).isCloseTo(30, within(1e-9));
	}

	@Test
	void whatIsCarriedOverWearsOff() {
		Fatigue fatigue = new Fatigue(0.4, 3);
		assertThat(fatigue.left(20, 0)).isEqualTo(8);
		assertThat(fatigue.left(20, 3)).isEqualTo(4);
		assertThat(new Fatigue(0, 3).left(20, 1)).isZero();
	}

	private static double autocorrelation(double[] values) {
		double product = 0;
		double square = 0;
		for (int index = 1; index < values.length; index++) {
			product += values[index] * values[index - 1];
			square += values[index] * values[index];
		}
		return product / square;
	}

}
