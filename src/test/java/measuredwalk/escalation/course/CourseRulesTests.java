package measuredwalk.escalation.course;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;

import measuredwalk.journal.MorningEntry;
import measuredwalk.journal.MorningFacts;
import measuredwalk.journal.Said;
import measuredwalk.journal.Standing;
import measuredwalk.journal.Teller;
import measuredwalk.journal.WalkEntry;
import measuredwalk.journal.WalkFacts;
import measuredwalk.signs.Overall;
import measuredwalk.signs.Severity;
import measuredwalk.signs.Sign;
import measuredwalk.signs.SignKind;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * Each course is written as a line of letters, one for each day, today last. Walks:
 * {@code .} none told, {@code 0} nothing seen, {@code 1} mild, {@code 2} clear, {@code 3}
 * severe lameness. Mornings: {@code .} none told, {@code 0} usual, {@code w} worse than
 * usual.
 */
class CourseRulesTests {

	private static final LocalDate TODAY = LocalDate.of(2026, 3, 14);

	private static final UUID DOG = UUID.randomUUID();

	private static final Teller WREN = new Teller(UUID.randomUUID(), "Wren");

	private static final String FOUR_WEEKS_OF_NOTHING = "0000000000000000000000000000";

	private static final String FOUR_WEEKS_MILDLY_LAME = "1111111111111111111111111111";

	@ParameterizedTest
	@CsvSource({
			// Thomas 2021: told after 72 hours without getting better.
			"0001111, true", "0002222, true", "00.1.11.1, true",
			// Getting better, so not before the eighth day.
			"0003321, false", "033222111, true",
			// Not yet 72 hours, or not told often enough to be a course.
			"0000111, false", "0001..1, false",
			// Over: the last day told of is a good one, or too long ago.
			"0111110, false", "1111..., false" })
	void aFlareThatDoesNotSettle(String walks, boolean raised) {
		assertThat(fits("flare-not-settling", FOUR_WEEKS_OF_NOTHING + walks, "")).isEqualTo(raised);
	}

	@Test
	void whatIsUsualForADogIsNoFlare() {
		assertThat(fits("flare-not-settling", FOUR_WEEKS_MILDLY_LAME + "1111111", "")).isFalse();
		assertThat(fits("flare-not-settling", FOUR_WEEKS_MILDLY_LAME + "1112222", "")).isTrue();
	}

	@Test
	void aFlareIsWorseOnTheEighthDayThanOnTheFourth() {
		assertThat(measure("flare-not-settling", FOUR_WEEKS_OF_NOTHING + "1111")).isEqualTo(1);
		assertThat(measure("flare-not-settling", FOUR_WEEKS_OF_NOTHING + "11111111")).isEqualTo(2);
	}

	@ParameterizedTest
	@CsvSource({ "00000001111111, true", "01010101212121, true", "1111111.2.2.2., true",
			// The same in both weeks, or falling.
			"11111111111111, false", "22222221111111, false",
			// Too few days told of to compare.
			"0....0.1.1.1.1, false", "00000001....1., false" })
	void lamenessThatClimbsOverTwoWeeks(String walks, boolean raised) {
		assertThat(fits("lameness-climbing", walks, "")).isEqualTo(raised);
	}

	@ParameterizedTest
	@CsvSource({ "00w..., true", "00w..0, true", "00w.0., false", "000..., false", "00w0.., false", "0w...., false" })
	void twoMorningsMissedAfterABadOne(String mornings, boolean raised) {
		assertThat(fits("mornings-missed-after-a-bad-one", "", mornings)).isEqualTo(raised);
	}

	@ParameterizedTest
	@CsvSource({ "61, true", "90, true", "60, false", "20, false" })
	void stiffnessThatDoesNotEase(double minutes, boolean raised) {
		DogCourse course = DogCourse.of(List.of(), List.of(morning(TODAY, Overall.USUAL, minutes)), TODAY.minusDays(30),
				TODAY);
		assertThat(rule("stiffness-not-easing").finds().apply(course).isPresent()).isEqualTo(raised);
	}

	@ParameterizedTest
	@CsvSource({ "00011, true", "0001.1, true", "00001, false", "00010, false", "00011..., false" })
	void lamenessBeyondADay(String walks, boolean raised) {
		assertThat(fits("lameness-beyond-a-day", FOUR_WEEKS_OF_NOTHING + walks, "")).isEqualTo(raised);
	}

	@Test
	void lamenessThatIsUsualForADogIsNotRaised() {
		assertThat(fits("lameness-beyond-a-day", FOUR_WEEKS_MILDLY_LAME + "1111111", "")).isFalse();
	}

	@Test
	void theEvidenceIsTheOwnersWordsOldestFirst() {
		List<String> said = rule("flare-not-settling").finds()
			.apply(course(FOUR_WEEKS_OF_NOTHING + "1111", ""))
			.orElseThrow()
			.evidence()
			.stream()
			.map((each) -> each.said())
			.toList();
		assertThat(said).containsExactly("walk of 2026-03-11", "walk of 2026-03-12", "walk of 2026-03-13",
				"walk of 2026-03-14");
	}

	@Test
	void everyRuleSaysWhenItFits() {
		assertThat(CourseRules.all()).isNotEmpty().allMatch((rule) -> !rule.fits().isBlank());
	}

	private static boolean fits(String rule, String walks, String mornings) {
		return rule(rule).finds().apply(course(walks, mornings)).isPresent();
	}

	private static double measure(String rule, String walks) {
		return rule(rule).finds().apply(course(walks, "")).orElseThrow().measure();
	}

	private static CourseRule rule(String name) {
		return CourseRules.all().stream().filter((rule) -> rule.name().equals(name)).findFirst().orElseThrow();
	}

	private static DogCourse course(String walks, String mornings) {
		List<WalkEntry> walked = new ArrayList<>();
		for (int i = 0; i < walks.length(); i++) {
			if (walks.charAt(i) != '.') {
				walked.add(walk(TODAY.minusDays(walks.length() - 1L - i), walks.charAt(i) - '0'));
			}
		}
		List<MorningEntry> told = new ArrayList<>();
		for (int i = 0; i < mornings.length(); i++) {
			if (mornings.charAt(i) != '.') {
				told.add(morning(TODAY.minusDays(mornings.length() - 1L - i),
						(mornings.charAt(i) == 'w') ? Overall.WORSE : Overall.USUAL, null));
			}
		}
		return DogCourse.of(walked, told, TODAY.minusDays(42), TODAY);
	}

	private static WalkEntry walk(LocalDate date, int lameness) {
		List<Sign> signs = (lameness > 0)
				? List.of(new Sign(SignKind.LAMENESS, true, Severity.values()[lameness - 1], null, null, null, null))
				: List.of();
		Instant at = date.atTime(9, 0).toInstant(ZoneOffset.UTC);
		return new WalkEntry(UUID.randomUUID(), 1, Standing.COUNTS, DOG,
				new WalkFacts(date, null, 20.0, 20.0, 20.0, null, false, null, signs, List.of()),
				List.of(new Said("walk of " + date, at, "Wren")), WREN, at, at, null, null);
	}

	private static MorningEntry morning(LocalDate date, Overall overall, @Nullable Double stiffMinutes) {
		Instant at = date.atTime(7, 40).toInstant(ZoneOffset.UTC);
		return new MorningEntry(UUID.randomUUID(), 1, Standing.COUNTS, DOG,
				new MorningFacts(date, stiffMinutes, overall, List.of(), List.of()),
				List.of(new Said("morning of " + date, at, "Wren")), WREN, at, at, null, null);
	}

}
