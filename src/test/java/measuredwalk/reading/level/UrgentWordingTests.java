package measuredwalk.reading.level;

import java.nio.file.Path;
import java.util.List;

import measuredwalk.reading.Level;
import measuredwalk.reading.context.Annotation;
import measuredwalk.reading.lexicon.Lexicon;
import measuredwalk.reading.score.LabelledMessage;
import measuredwalk.reading.words.WordReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import static org.assertj.core.api.Assertions.assertThat;

class UrgentWordingTests {

	private static final Path FIXTURES = Path.of("fixtures/reading");

	private static final Lexicon LEXICON = Lexicon.standard();

	private static final WordReader READER = new WordReader(LEXICON);

	private static final UrgentWording WORDING = UrgentWording.standard();

	private static final OrdinaryFindings NOTHING = OrdinaryFindings.of(List.of(), null, false);

	private Annotation annotated(String text, String dogName) {
		return Annotation.of(READER.read(text, dogName), LEXICON);
	}

	private LevelRule rule(String text) {
		return WORDING.rule(annotated(text, "Thistle"), "Thistle", NOTHING);
	}

	@ParameterizedTest
	@ValueSource(strings = { "20 minutes, fine", "a bit stiff this morning, five minutes to loosen up",
			"no limp at all today", "same as usual", "" })
	void ordinaryAnswersAreLeftAlone(String text) {
		assertThat(rule(text)).isNull();
	}

	@Test
	void itFindsMostOfWhatCannotWaitByItself() {
		List<LabelledMessage> urgent = LabelledMessage.read(FIXTURES.resolve("emergencies.jsonl"));
		assertThat(urgent).filteredOn((each) -> rule(each.message().text()) != null)
			.hasSizeGreaterThan(urgent.size() * 3 / 4);
	}

	@Test
	void whatItRaisesIsSameDayOrEmergency() {
		assertThat(LabelledMessage.read(FIXTURES.resolve("fresh-emergencies.jsonl")))
			.map((each) -> rule(each.message().text()))
			.filteredOn((rule) -> rule != null)
			.map(LevelRule::level)
			.contains(Level.EMERGENCY, Level.SAME_DAY)
			.doesNotContain(Level.WATCH, Level.NONE);
	}

	@Test
	void itLooksForTheSameRunsThatItLearned() {
		Annotation words = annotated("Thistle fell over. she can't get up, 20 min now", "Thistle");
		assertThat(WordRuns.of(words, "Thistle")).containsExactlyInAnyOrder(
				UrgentWordingTraining.written(words, "Thistle").stream().mapToLong(WordRuns::of).toArray());
	}

	@ParameterizedTest
	@ValueSource(strings = { "her gums are not white", "gums not at all white", "no collapse", "he did not collapse" })
	void whatIsDeniedIsNotRaised(String text) {
		assertThat(rule(text)).isNull();
	}

	@Test
	void theDogsNameAndFiguresMakeNoDifference() {
		double[] one = WORDING.chances(annotated("Thistle had 20 minutes and went down", "Thistle"), "Thistle",
				NOTHING);
		double[] other = WORDING.chances(annotated("Bracken had 35 minutes and went down", "Bracken"), "Bracken",
				NOTHING);
		assertThat(one).isEqualTo(other);
	}

}
