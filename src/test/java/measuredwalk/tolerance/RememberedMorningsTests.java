package measuredwalk.tolerance;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

import static org.assertj.core.api.Assertions.assertThat;

/** What is remembered of journals never changes an answer. */
class RememberedMorningsTests {

	private static final ToleranceModel FORGETFUL = new ToleranceModel(ToleranceSettings.standard(), 0);

	private static final ToleranceModel MODEL = new ToleranceModel(ToleranceSettings.standard(), 2);

	@Provide
	Arbitrary<List<ToleranceEvent>> journals() {
		return Journals.journals();
	}

	@Property(tries = 60)
	void aJournalThatGrowsIsAnsweredAsIfReadAnew(@ForAll("journals") List<ToleranceEvent> journal) {
		for (int told = 1; told <= journal.size(); told += 1 + journal.size() / 6) {
			assertSame(journal.subList(0, told));
		}
		assertSame(journal);
	}

	@Property(tries = 60)
	void aCorrectionOfAnyEventIsTakenIn(@ForAll("journals") List<ToleranceEvent> journal) {
		MODEL.suggest(journal, lastDay(journal));
		for (int left = 1; left < journal.size(); left += 1 + journal.size() / 5) {
			List<ToleranceEvent> corrected = new ArrayList<>(journal);
			corrected.remove(left);
			assertSame(corrected);
		}
		assertSame(journal);
	}

	@Test
	void oneDogMayBeAskedAboutByManyAtOnce() {
		List<ToleranceEvent> journal = Journals.journals().sample();
		Suggestion expected = FORGETFUL.suggest(journal, lastDay(journal));
		assertThat(IntStream.range(0, 200)
			.parallel()
			.mapToObj((asked) -> MODEL.suggest(journal, lastDay(journal).plusDays(asked % 3)))
			.filter((answer) -> answer.date().equals(expected.date()))).containsOnly(expected);
	}

	@Test
	void onlySoManyDogsAreRemembered() {
		RememberedMornings remembered = new RememberedMornings(2);
		List<List<ToleranceEvent>> dogs = IntStream.of(10, 20, 30).mapToObj(RememberedMorningsTests::enrolled).toList();
		for (List<ToleranceEvent> dog : dogs) {
			remembered.keep(
					new RememberedMornings.Remembered(dog, FORGETFUL.follow(dog).morningOf(Journals.FIRST.plusDays(1))),
					null);
		}
		assertThat(dogs.stream().map((dog) -> remembered.beginningOf(withMorning(dog, 1)) != null))
			.containsExactly(false, true, true);
		assertThat(remembered.beginningOf(withMorning(dogs.get(2), 0))).as("goes on before the morning").isNull();
	}

	private static List<ToleranceEvent> withMorning(List<ToleranceEvent> dog, int day) {
		List<ToleranceEvent> longer = new ArrayList<>(dog);
		longer.add(new ToleranceEvent.MorningSeen(Journals.FIRST.plusDays(day), List.of(), null, null, false));
		return longer;
	}

	private static List<ToleranceEvent> enrolled(int minutes) {
		return List.of(new ToleranceEvent.DogEnrolled(Journals.FIRST, new WalkPlan(minutes, 2, 5, 60), null, null, true,
				null));
	}

	private static void assertSame(List<ToleranceEvent> journal) {
		LocalDate day = lastDay(journal);
		assertThat(MODEL.suggest(journal, day)).isEqualTo(FORGETFUL.suggest(journal, day));
		assertThat(MODEL.suggest(journal, day.plusDays(2))).isEqualTo(FORGETFUL.suggest(journal, day.plusDays(2)));
	}

	private static LocalDate lastDay(List<ToleranceEvent> journal) {
		return journal.get(journal.size() - 1).date();
	}

}
