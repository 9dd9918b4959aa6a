package measuredwalk.tolerance;

import java.time.LocalDate;
import java.util.List;

import measuredwalk.tolerance.ToleranceEvent.MorningSeen;
import measuredwalk.tolerance.ToleranceEvent.WalkTaken;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

import static org.assertj.core.api.Assertions.assertThat;

/** Evidence, what-if and calibration say nothing that the journal does not show. */
class EvidenceTests {

	private static final int DAYS = 14;

	private final ToleranceModel model = new ToleranceModel();

	@Provide
	Arbitrary<List<ToleranceEvent>> journals() {
		return Journals.journals();
	}

	@Property(tries = 150)
	void everyWalkOfTheLastDaysIsCountedOnceAndNoOther(@ForAll("journals") List<ToleranceEvent> journal) {
		LocalDate today = journal.get(journal.size() - 1).date();
		Evidence evidence = this.model.evidence(journal, today, DAYS);
		List<WalkTaken> walks = journal.stream()
			.filter(WalkTaken.class::isInstance)
			.map(WalkTaken.class::cast)
			.filter((walk) -> walk.date().isAfter(today.minusDays(DAYS)))
			.toList();
		assertThat(evidence.walks().stream().mapToInt(Evidence.WalksOfLength::walks).sum()).isEqualTo(walks.size());
		assertThat(evidence.walks().stream().mapToInt(Evidence.WalksOfLength::withSigns).sum())
			.isEqualTo(walks.stream().filter((walk) -> !walk.signs().isEmpty()).count());
		for (Evidence.WalksOfLength band : evidence.walks()) {
			assertThat(band.walks()).isEqualTo((int) walks.stream()
				.filter((walk) -> walk.minutes() > band.overMinutes() && walk.minutes() <= band.atMostMinutes())
				.count());
		}
	}

	@Property(tries = 100)
	void morningsAreCountedOnlyWhenTold(@ForAll("journals") List<ToleranceEvent> journal) {
		LocalDate today = journal.get(journal.size() - 1).date();
		Evidence.Mornings mornings = this.model.evidence(journal, today, DAYS).mornings();
		long told = journal.stream()
			.filter((event) -> event instanceof MorningSeen && event.date().isAfter(today.minusDays(DAYS)))
			.count();
		assertThat(mornings.told()).isEqualTo((int) told);
		assertThat(mornings.bad()).isLessThanOrEqualTo(mornings.worse());
		assertThat(mornings.worse()).isLessThanOrEqualTo(mornings.told());
	}

	@Property(tries = 60)
	void chanceRisesWithTheMinutesAndAgreesWithTheSuggestion(@ForAll("journals") List<ToleranceEvent> journal) {
		LocalDate today = journal.get(journal.size() - 1).date();
		Chances chances = this.model.chances(journal, today);
		Suggestion suggestion = this.model.suggest(journal, today);
		for (double minutes = 2; minutes < 120; minutes += 7) {
			assertThat(chances.ofTrouble(minutes)).isBetween(0.0, chances.ofTrouble(minutes + 7));
		}
		if (suggestion.walks() == this.model.suggest(journal.subList(0, 1), Journals.FIRST).walks()) {
			assertThat(chances.ofTrouble(chances.longest(0.2))).isCloseTo(0.2,
					org.assertj.core.api.Assertions.within(1e-6));
		}
	}

	@Property(tries = 60)
	void calibrationCountsEveryWalkAndEverySign(@ForAll("journals") List<ToleranceEvent> journal) {
		Calibration calibration = this.model.calibration(journal);
		List<WalkTaken> walks = journal.stream()
			.filter(WalkTaken.class::isInstance)
			.map(WalkTaken.class::cast)
			.toList();
		assertThat(calibration.walks()).isEqualTo(walks.size());
		assertThat(calibration.rows().stream().mapToInt(Calibration.Row::seen).sum())
			.isEqualTo((int) walks.stream().filter((walk) -> !walk.signs().isEmpty()).count());
		assertThat(calibration.isEnough()).isEqualTo(walks.size() >= Calibration.ENOUGH_WALKS);
		for (Calibration.Row row : calibration.rows()) {
			assertThat(row.expected()).isBetween(0.0, (double) row.walks());
		}
	}

}
