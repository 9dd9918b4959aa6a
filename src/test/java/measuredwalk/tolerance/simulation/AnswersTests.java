package measuredwalk.tolerance.simulation;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

import measuredwalk.signs.Sign;
import measuredwalk.tolerance.ToleranceEvent;
import measuredwalk.tolerance.ToleranceEvent.MorningSeen;
import measuredwalk.tolerance.ToleranceEvent.WalkTaken;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

class AnswersTests {

	private static final int DAYS = 600;

	private static final int HOMES = 24;

	@ParameterizedTest
	@CsvSource({ "AVERAGE, 0.02, 0.01", "WORRIED, 0.08, 0.015", "NEVER_REPORTS, 0, 0" })
	void ownersTellOfTroubleThatWasNoneAsOftenAsStated(OwnerKind kind, double share, double within) {
		// On walks of five minutes no dog of the middle size shows a true sign.
		List<WalkTaken> walks = walksOf(Worlds.MILDER.withOwners(kind), 5);
		double told = walks.stream().filter((walk) -> walk.signs().stream().anyMatch(Sign::present)).count();
		assertThat(told / walks.size()).isCloseTo(share, within(within));
	}

	@Test
	void poorObserversNoticeAboutFourTenthsOfWhatGoesALittleOver() {
		double mean = IntStream.range(0, 400)
			.mapToDouble((number) -> OwnerKind.POOR.draw(Kind.STEADY, AnswerLaws.USUAL, Luck.of(number))
				.seeing()
				.noticing(1.10))
			.average()
			.orElseThrow();
		assertThat(mean).isCloseTo(0.40, within(0.03));
	}

	@Test
	void theFurtherOverTheMoreIsNoticed() {
		Seeing seeing = new Seeing(0.4, 0.5, 0.02, 3);
		assertThat(seeing.noticing(1.05)).isLessThan(seeing.noticing(1.4));
		assertThat(new Seeing(0, 0, 0, 3).noticing(2)).isZero();
	}

	@ParameterizedTest
	@CsvSource({ "AT_RANDOM, 0.15", "IN_RUNS, 0.35" })
	void theStatedShareIsNotAnswered(SilenceLaw law, double share) {
		double missed = IntStream.range(0, 300)
			.mapToDouble((number) -> shareMissed(law.draw(share, Luck.of(number)), false))
			.average()
			.orElseThrow();
		assertThat(missed).isCloseTo(share, within(0.02));
	}

	@Test
	void silenceInRunsLastsSixDaysOnAverage() {
		double runs = 0;
		double silent = 0;
		for (int number = 0; number < 200; number++) {
			Silence silence = SilenceLaw.IN_RUNS.draw(0.35, Luck.of(number));
			for (int day = 1; day < DAYS; day++) {
				boolean today = silence.missed(Luck.of(day), day, false);
				silent += today ? 1 : 0;
				runs += (today && !silence.missed(Luck.of(day), day - 1, false)) ? 1 : 0;
			}
		}
		assertThat(silent / runs).isCloseTo(6, within(0.5));
	}

	@Test
	void troubleSilencesWhenAnswersAreNotMissingAtRandom() {
		Silence silence = SilenceLaw.NOT_AT_RANDOM.draw(0.15, Luck.of(1));
		assertThat(shareMissed(silence, true)).isCloseTo(0.60, within(0.06));
		assertThat(shareMissed(silence, false)).isCloseTo(0.15, within(0.05));
	}

	@ParameterizedTest
	@CsvSource({ "0, 0", "0.03, 0.03", "0.10, 0.10" })
	void amountsAreMisreadAsOftenAsStated(double misread, double share) {
		Luck luck = Luck.of(8);
		double wrong = IntStream.range(0, 20_000)
			.filter((number) -> Math.abs(Math.log(Amounts.told(20, misread, luck) / 20)) > 0.5)
			.count();
		assertThat(wrong / 20_000).isCloseTo(share, within(0.006));
	}

	@Test
	void fifteenAndFiftyAreMixedUp() {
		Luck luck = Luck.of(9);
		assertThat(IntStream.range(0, 200).mapToDouble((number) -> Amounts.told(15, 1, luck))).contains(50.0);
		assertThat(IntStream.range(0, 200).mapToDouble((number) -> Amounts.told(50, 1, luck))).contains(15.0);
	}

	@Test
	void aStiffBaselineShowsOnMorningsAfterEasyDays() {
		World stiff = Worlds.MILDER.withOwners(OwnerKind.GOOD)
			.withBody(BodyLaws.MILDER.withUsualStiffness(Range.exactly(0.30)));
		List<MorningSeen> mornings = eventsOf(stiff, 5).stream()
			.filter(MorningSeen.class::isInstance)
			.map(MorningSeen.class::cast)
			.toList();
		double told = mornings.stream().filter((morning) -> !morning.signs().isEmpty()).count();
		// Owners of the good kind notice 85 to 95 % of them; flares add a little.
		assertThat(told / mornings.size()).isBetween(0.24, 0.36);
	}

	@Test
	void overloadMakesMorningsWorseAndMuchOverloadPlainly() {
		assertThat(MorningAnswers.stiffChance(0.7, 0)).isLessThan(0.05);
		assertThat(MorningAnswers.stiffChance(1.4, 0)).isGreaterThan(0.6);
		assertThat(MorningAnswers.plainChance(1.1, 0)).isLessThan(0.1);
		assertThat(MorningAnswers.plainChance(1.4, 0.3)).isGreaterThan(0.8);
	}

	@Test
	void aLateAnswerComesTwoDaysAfterItsDay() {
		List<ToleranceEvent> told = new ArrayList<>();
		Answers answers = new Answers(2, told::add);
		ToleranceEvent late = new MorningSeen(LocalDate.of(2026, 3, 1), List.of(), null, null, true);
		answers.beginDay(1, List.of());
		answers.tell(late, true);
		answers.beginDay(2, List.of());
		assertThat(told).isEmpty();
		answers.beginDay(3, List.of());
		assertThat(told).containsExactly(late);
	}

	@Test
	void aLateAnswerIsPutWhereItBelongs() {
		ToleranceEvent enrolled = Household.draw(Worlds.MILDER, Kind.STEADY, 0, 1).enrolled();
		LocalDate day = Household.ENROLLED.plusDays(5);
		ToleranceEvent morning = new MorningSeen(day, List.of(), null, null, true);
		ToleranceEvent nextMorning = new MorningSeen(day.plusDays(1), List.of(), null, null, false);
		WalkTaken walk = new WalkTaken(day, null, 20, 20, 20, null, List.of(), false);
		List<ToleranceEvent> history = new ArrayList<>(List.of(enrolled, walk, nextMorning));
		assertThat(JournalOrder.insert(history, morning)).isEqualTo(1);
		assertThat(history).containsExactly(enrolled, morning, walk, nextMorning);
	}

	private static double shareMissed(Silence silence, boolean trouble) {
		return IntStream.range(0, DAYS).filter((day) -> silence.missed(Luck.of(day), day, trouble)).count()
				/ (double) DAYS;
	}

	private static List<WalkTaken> walksOf(World world, double minutes) {
		return eventsOf(world, minutes).stream()
			.filter(WalkTaken.class::isInstance)
			.map(WalkTaken.class::cast)
			.toList();
	}

	private static List<ToleranceEvent> eventsOf(World world, double minutes) {
		List<ToleranceEvent> events = new ArrayList<>();
		for (int number = 0; number < HOMES; number++) {
			Household home = Household.draw(world, Kind.STEADY, number, 4);
			Trial.run(home, new AlwaysTheSame(minutes), 100, events::add);
		}
		return events;
	}

}
