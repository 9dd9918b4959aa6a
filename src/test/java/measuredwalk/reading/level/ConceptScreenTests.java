package measuredwalk.reading.level;

import java.time.LocalDateTime;
import java.util.Set;

import measuredwalk.reading.Level;
import measuredwalk.reading.MessageReader;
import measuredwalk.reading.OwnerMessage;
import measuredwalk.reading.Question;
import measuredwalk.reading.Reading;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import static org.assertj.core.api.Assertions.assertThat;

/** Signs that are told by ideas that combine; families of the emergency lists. */
class ConceptScreenTests {

	private static final MessageReader READER = MessageReader.standard();

	private static Reading read(String text) {
		return READER
			.read(new OwnerMessage(text, Question.ANY, LocalDateTime.of(2026, 3, 14, 18, 30), "Bracken", Set.of()));
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', value = { "non-weight-bearing | he won't put no weight on that hind leg whatsoever",
			"non-weight-bearing | wee man's no puttin his back paw doon at all",
			"recumbency | there's no rising her off the rug", "paresis | his back pins folded up at the gate",
			"paresis | her hindquarters simply went from beneath him",
			"knuckling | her paw is folded so she stands on the furry side",
			"collapse | he keeled over, out cold for ten seconds",
			"dyspnoea | sides going in and out like mad and he's only lying there",
			"pale-gums | lifted her lip and it is the colour of candle wax",
			"seizure | legs jerking, jaw clacking and slobber everywhere",
			"unproductive-retching | he is doing a vomiting action but nothing is coming out",
			"abdominal-distension | his stomach has become tight like a tabla",
			"unable-to-urinate | cocked his leg on every post and not a drip out of him",
			"bleeding | claw ripped clean off, through three towels and still dripping",
			"vocalising | he is crying continuously since last night",
			"heat-illness | 30 degrees and he won't stop panting and has gone all floppy",
			"swelling | knee's come up like a grapefruit since last night and it's burning",
			"toxin-ingestion | licked up the antifreeze on the drive",
			"melaena | his business was black and sticky like treacle",
			"inappetence | not touched a morsel since yesterday breakfast",
			"lameness | sound yesterday, today he is hobbling on the front right",
			"pain | his neck is so sore that he can't turn it", "jaundice | the whites of her eyes look custard" })
	void aSignIsSeenInWordingThatIsNoStoredPhrase(String sign, String text) {
		Reading reading = read(text);
		assertThat(reading.level()).isGreaterThanOrEqualTo(Level.SAME_DAY);
		assertThat(reading.signs())
			.anySatisfy((seen) -> assertThat(seen.kind().code() + seen.present()).isEqualTo(sign + "true"));
	}

	@ParameterizedTest
	@ValueSource(strings = { "her gums are not at all white", "his belly isn't swollen",
			"some poodle was screaming its head off by the swings", "he had a fit of the zoomies",
			"lifted his leg on the church wall", "put the chocolate away so he can't get at it",
			"might I ask what colour a dog's gums ought to be?", "black labrador did a normal poo" })
	void whatIsDeniedForeignOrAFigureOfSpeechRaisesNoAlarm(String text) {
		assertThat(read(text).level()).isLessThan(Level.SAME_DAY);
	}

}
