package measuredwalk.tolerance.simulation;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;

import measuredwalk.tolerance.ToleranceEvent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

class TrialTests {

	@Test
	void seedsForTuningAndForJudgingNeverMeet() {
		assertThat(LongStream.of(Seeds.TUNING.first(1000)))
			.doesNotContainAnyElementsOf(LongStream.of(Seeds.JUDGING.first(1000)).boxed().toList());
	}

	@Test
	void theSameHouseholdLivesTheSameLifeAgain() {
		List<ToleranceEvent> once = new ArrayList<>();
		List<ToleranceEvent> again = new ArrayList<>();
		List<TrialDay> first = Trial.run(home(Worlds.HARDER, 3), new BiasedCoinStaircase(), 120, once::add);
		assertThat(Trial.run(home(Worlds.HARDER, 3), new BiasedCoinStaircase(), 120, again::add)).isEqualTo(first);
		assertThat(again).isEqualTo(once);
	}

	@Test
	void twoPoliciesMeetTheSameDogWithTheSameLuck() {
		// Within its tolerance both ways, a dog of this world differs by training alone,
		// at most .2 % a day.
		List<TrialDay> five = Trial.run(home(Worlds.MILDER, 5), new AlwaysTheSame(8), 20);
		List<TrialDay> four = Trial.run(home(Worlds.MILDER, 5), new AlwaysTheSame(7.5), 20);
		for (int day = 0; day < 20; day++) {
			assertThat(Math.log(five.get(day).tolerance() / four.get(day).tolerance())).isCloseTo(0, within(0.02));
		}
	}

	@Test
	void whatIsToldOnTimeNeverRunsBack() {
		List<ToleranceEvent> told = new ArrayList<>();
		Trial.run(home(Worlds.HARDER, 2), new FixedPlan(), 180, told::add);
		assertThat(told).isSortedAccordingTo(java.util.Comparator.comparing(ToleranceEvent::date));
	}

	@ParameterizedTest
	@EnumSource(Kind.class)
	void everyKindOfDogGetsFiniteDaysWithinItsPlan(Kind kind) {
		Household home = Household.draw(Worlds.HARDER, kind, 1, 9);
		assertThat(Trial.run(home, new TenPercentRule(), 180)).hasSize(180).allSatisfy((day) -> {
			assertThat(day.tolerance()).isBetween(0.0, 400.0);
			assertThat(day.bestSafe()).isBetween(home.plan().minMinutes(), home.plan().maxMinutes());
			assertThat(day.dose().minutes()).isBetween(home.plan().minMinutes(), home.plan().maxMinutes());
		});
	}

	@Test
	void aSuddenDropTakesAQuarterOrMoreOfTheTolerance() {
		Household home = Household.draw(Worlds.MILDER, Kind.SUDDEN_DROP, 4, 9);
		int drop = home.dropDay().orElseThrow();
		double before = home.influences().stream().mapToDouble((influence) -> influence.logShift(drop - 1)).sum();
		double after = home.influences().stream().mapToDouble((influence) -> influence.logShift(drop)).sum();
		assertThat(before - after).isBetween(-Math.log(0.75), -Math.log(0.55));
	}

	@Test
	void overactiveOwnersWalkLongerThanAskedAboveAllAtWeekends() {
		Household home = Household.draw(Worlds.MILDER, Kind.OVERACTIVE_OWNER, 1, 9);
		double weekdays = meanWalk(home, 7, 11);
		double weekend = meanWalk(home, 12, 13);
		assertThat(weekdays).isGreaterThan(10.3);
		assertThat(weekend / weekdays).isGreaterThan(1.2);
	}

	private static double meanWalk(Household home, int firstDay, int lastDay) {
		Outing outing = new Outing(home);
		Morning morning = new Morning(Math.log(500), -0.2, new Fatigue(0, 3), 0, -6);
		List<Walked> walks = new ArrayList<>();
		for (int week = 0; week < 30; week++) {
			for (int day = firstDay; day <= lastDay; day++) {
				walks.addAll(outing.walk(morning, 500, Dose.of(2, 10), day + 7 * week));
			}
		}
		return walks.stream().mapToDouble(Walked::minutes).average().orElseThrow();
	}

	private static Household home(World world, int number) {
		return Household.draw(world, Kind.STEADY, number, 77);
	}

}
