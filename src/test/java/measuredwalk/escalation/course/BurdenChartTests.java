package measuredwalk.escalation.course;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

import measuredwalk.escalation.ReviewDesign;
import measuredwalk.journal.Said;
import measuredwalk.journal.Standing;
import measuredwalk.journal.Teller;
import measuredwalk.journal.WalkEntry;
import measuredwalk.journal.WalkFacts;
import measuredwalk.signs.Severity;
import measuredwalk.signs.Sign;
import measuredwalk.signs.SignKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

class BurdenChartTests {

	private static final LocalDate TODAY = LocalDate.of(2026, 3, 14);

	/** Days without a sign, mildly, clearly and severely bad ones, of 28. */
	static UsualDays usual(int none, int mild, int clear, int severe) {
		List<Integer> grades = new ArrayList<>(Collections.nCopies(none, 0));
		grades.addAll(Collections.nCopies(mild, 1));
		grades.addAll(Collections.nCopies(clear, 2));
		grades.addAll(Collections.nCopies(severe, 3));
		return UsualDays.of(grades);
	}

	private static Optional<Finding> in(DogCourse course, LocalDate medicineChangedOn) {
		return PilingUp.in(course.withMedicineChangedOn(medicineChangedOn).withDesign(ReviewDesign.KEENER));
	}

	@Test
	void fewDaysAreShrunkToWhatIsAssumed() {
		assertThat(UsualDays.of(List.of()).mean()).isCloseTo(0.40, within(1e-9));
		assertThat(UsualDays.of(Collections.nCopies(10, 1)).mean()).isCloseTo(0.70, within(1e-9));
	}

	/** By the exact run length, for days that do not hang together. */
	@ParameterizedTest
	@CsvSource({ "28, 0, 0, 0", "20, 6, 2, 0", "14, 14, 0, 0", "0, 28, 0, 0", "7, 14, 6, 1" })
	void aDogAsUsualIsRaisedFalselyAtMostAsOftenAsTheDesignSays(int none, int mild, int clear, int severe) {
		UsualDays usual = usual(none, mild, clear, severe);
		for (ReviewDesign design : ReviewDesign.values()) {
			double length = BurdenChart.falseAlarmEvery(BurdenChart.of(usual, design.burdenDays()).cusum(), usual);
			assertThat(length).isBetween(design.burdenDays(), 2 * design.burdenDays());
		}
	}

	@ParameterizedTest
	@CsvSource({ "28, 0, 0, 0", "20, 6, 2, 0", "14, 14, 0, 0", "7, 14, 6, 1" })
	void aLastingRiseOfOneStandardDeviationIsSeenWithinTwoWeeksOrThreeOnAverage(int none, int mild, int clear,
			int severe) {
		UsualDays usual = usual(none, mild, clear, severe);
		assertThat(daysToARise(usual, ReviewDesign.KEENER)).isLessThan(14);
		assertThat(daysToARise(usual, ReviewDesign.BALANCED)).isLessThan(21);
	}

	/** Days told of until an alarm after a lasting rise of one own standard deviation. */
	static double daysToARise(UsualDays usual, ReviewDesign design) {
		return BurdenChart.falseAlarmEvery(BurdenChart.of(usual, design.burdenDays()).cusum(),
				risen(usual, usual.mean() + usual.deviation()));
	}

	@Test
	void aQuieterDesignNeedsMoreOfTheSameToAlarm() {
		DogCourse piling = course("0010001000100000100010000010" + "121121").withMedicineChangedOn(TODAY.minusDays(60));
		assertThat(PilingUp.in(piling.withDesign(ReviewDesign.KEENER))).isPresent();
		assertThat(PilingUp.in(piling.withDesign(ReviewDesign.QUIETER))).isEmpty();
	}

	/** The exponentially tilted law of a mean: the nearest one that has it. */
	private static UsualDays risen(UsualDays usual, double mean) {
		double low = 0;
		double high = 20;
		UsualDays tilted = usual;
		for (int i = 0; i < 60; i++) {
			double tilt = (low + high) / 2;
			tilted = tilted(usual, tilt);
			if (tilted.mean() < mean) {
				low = tilt;
			}
			else {
				high = tilt;
			}
		}
		return tilted;
	}

	private static UsualDays tilted(UsualDays usual, double tilt) {
		double[] weights = new double[4];
		double sum = 0;
		for (int grade = 0; grade < 4; grade++) {
			weights[grade] = usual.shares().get(grade) * Math.exp(tilt * grade);
			sum += weights[grade];
		}
		return new UsualDays(List.of(weights[0] / sum, weights[1] / sum, weights[2] / sum, weights[3] / sum));
	}

	@Test
	void signsThatPileUpAreFoundAndTheOwnersWordsAreTheEvidence() {
		Optional<Finding> found = in(course("0010001000100000100010000010" + "1211212"), TODAY.minusDays(60));
		assertThat(found).isPresent();
		assertThat(found.orElseThrow().evidence()).hasSize(6);
	}

	@Test
	void whatIsUsualForADogIsNotFound() {
		assertThat(in(course("1010111010110110101101010110" + "0110101"), TODAY.minusDays(60))).isEmpty();
	}

	@Test
	void theChartBeginsAgainWhenAMedicineChanges() {
		assertThat(in(course("0010001000100000100010000010" + "1211212"), TODAY.minusDays(10))).isEmpty();
	}

	private static DogCourse course(String grades) {
		List<WalkEntry> walks = new ArrayList<>();
		for (int i = 0; i < grades.length(); i++) {
			walks.add(walk(TODAY.minusDays(grades.length() - 1L - i), grades.charAt(i) - '0'));
		}
		return DogCourse.of(walks, List.of(), TODAY.minusDays(60), TODAY);
	}

	private static WalkEntry walk(LocalDate date, int grade) {
		List<Sign> signs = (grade > 0)
				? List.of(new Sign(SignKind.SLOWING, true, Severity.values()[grade - 1], null, null, null, null))
				: List.of();
		var at = date.atTime(9, 0).toInstant(ZoneOffset.UTC);
		return new WalkEntry(UUID.randomUUID(), 1, Standing.COUNTS, UUID.randomUUID(),
				new WalkFacts(date, null, 20.0, 20.0, 20.0, null, false, null, signs, List.of()),
				List.of(new Said("walk of " + date, at, "Wren")), new Teller(UUID.randomUUID(), "Wren"), at, at, null,
				null);
	}

}
