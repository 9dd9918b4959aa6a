package measuredwalk.reading;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Set;

import measuredwalk.signs.Coded;
import measuredwalk.signs.Limb;
import measuredwalk.signs.Moment;
import measuredwalk.signs.Severity;
import measuredwalk.signs.Side;
import measuredwalk.signs.Sign;
import measuredwalk.signs.SignKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import static org.assertj.core.api.Assertions.assertThat;

/** What is read from messages; English usage is common practice, no source. */
class MessageReaderTests {

	private static final MessageReader READER = MessageReader.standard();

	private static final LocalDateTime SATURDAY_EVENING = LocalDateTime.of(2026, 3, 14, 18, 30);

	private static Reading walk(String text) {
		return read(Question.WALK, text);
	}

	private static Reading read(Question question, String text) {
		return READER.read(new OwnerMessage(text, question, SATURDAY_EVENING, "Bracken", Set.of()));
	}

	private static Sign sign(Reading reading, SignKind kind) {
		return reading.signs().stream().filter((sign) -> sign.kind() == kind).findFirst().orElseThrow();
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', value = { "25 mins round the field | 25", "half an hour | 30", "22. | 22",
			"did 25, bit stiff | 25", "left 7.10 back 7.35 | 25", "15-20 minutes | 17.5", "1h15 | 75",
			"he is 12 and weighs 27 kg, today 25 mins | 25", "gave 2 tablets, then 20 minutes | 20",
			"fifty minuets and he never faltered | 50", "12 not 20, sorry | 12", "45 mins. sorry, 35 | 35",
			"30 minutes, met the lady from number 22 | 30", "it was £48 at the vets then 10 minutes on the green | 10",
			"12 mins each way | 24", "meant to be 30 but we came home after 18 | 18" })
	void readsHowLongTheWalkWas(String text, double minutes) {
		assertThat(walk(text).walks()).singleElement().extracting(WalkTold::minutes).isEqualTo(minutes);
	}

	@ParameterizedTest
	@ValueSource(strings = { "she is off her food and was sick twice this morning", "she limped twice this morning" })
	void aSignThatWasSeenTwiceIsNoWalkTwiceAsLong(String text) {
		assertThat(read(Question.ANY, text).walks()).isEmpty();
	}

	@ParameterizedTest
	@ValueSource(strings = { "2 x 10 min", "twice round the block, ten minutes each", "10 this morning, 10 tonight" })
	void readsTwoWalksWhereTwoAreTold(String text) {
		assertThat(walk(text).walks()).hasSize(2).allSatisfy((walk) -> assertThat(walk.minutes()).isEqualTo(10));
	}

	@ParameterizedTest
	@ValueSource(strings = { "he is 12", "weighed 31.4 today", "new dose is 40 mg from the 1st", "ask me in an hour",
			"no walk, visitors all day" })
	void takesNoOtherNumberForAWalk(String text) {
		assertThat(walk(text).walks()).isEmpty();
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', value = { "half the usual | usual | 0.5 |", "same as yesterday | previous | 1 |",
			"usual loop twice | usual | 2 |", "ten minutes longer than usual | usual | | 10" })
	void readsAWalkAgainstAnother(String text, String base, Double factor, Double offset) {
		assertThat(walk(text).walks()).singleElement()
			.extracting(WalkTold::relative)
			.isEqualTo(new RelativeAmount(Coded.of(RelativeAmount.Base.class, base), factor, offset));
	}

	@ParameterizedTest
	@ValueSource(strings = { "no limp, 20 min", "not limping at all", "can't say he was limping", "wasn't limping",
			"didn't limp", "without a limp", "limping: none", "never limped once", "no sign of a limp",
			"I don't think she was limping", "neither limping nor stiff", "limp has gone", "nae limp the day" })
	void keepsWhatIsDenied(String text) {
		assertThat(sign(walk(text), SignKind.LAMENESS).present()).isFalse();
	}

	@ParameterizedTest
	@ValueSource(strings = { "limping", "hardly any limp", "didn't limp until we got home", "not limping as much",
			"no stiffness but limping", "no pain apart from a limp", "not only stiff but limping", "still limping",
			"he was stiff then limping", "limpnig", "no idea why he is limping" })
	void keepsWhatIsAsserted(String text) {
		assertThat(sign(walk(text), SignKind.LAMENESS).present()).isTrue();
	}

	@ParameterizedTest
	@ValueSource(strings = { "used to limp", "he limped last year", "watching for a limp", "if he limps I will stop",
			"the other dog was limping", "I was limping more than him", "my knee was sore and I limped",
			"next door's dog is limping" })
	void leavesOutWhatIsNotOfThisDogNow(String text) {
		assertThat(walk(text).signs()).noneMatch((sign) -> sign.kind() == SignKind.LAMENESS && sign.present());
	}

	@ParameterizedTest
	@ValueSource(strings = { "dragged me round the park", "dead to the world on the sofa", "fell over laughing at him",
			"he slept through half time", "left home at nine", "sound asleep now", "fit as a fiddle" })
	void isNotTakenInByPhrasesThatSeemToTellOfSigns(String text) {
		assertThat(walk(text).signs()).isEmpty();
	}

	@ParameterizedTest
	@CsvSource({ "near hind, LEFT, HIND", "off fore, RIGHT, FORE", "back left, LEFT, HIND", "right elbow, RIGHT, FORE",
			"left hip, LEFT, HIND", "R hind, RIGHT, HIND", "front right, RIGHT, FORE" })
	void readsWhichLeg(String words, Side side, Limb limb) {
		Sign lame = sign(walk("lame on the " + words + ", 20 min"), SignKind.LAMENESS);
		assertThat(lame.side()).isEqualTo(side);
		assertThat(lame.limb()).isEqualTo(limb);
	}

	@ParameterizedTest
	@ValueSource(strings = { "limping when we came back home", "we went right round and he was limping",
			"limping, left the park early" })
	void inventsNoLegWhereTheTextHasNone(String text) {
		Sign lame = sign(walk(text), SignKind.LAMENESS);
		assertThat(lame.side()).isNull();
		assertThat(lame.limb()).isNull();
	}

	@ParameterizedTest
	@CsvSource({ "a bit stiff, MILD", "slightly stiff, MILD", "quite stiff, MODERATE", "very stiff, SEVERE",
			"barely stiff, MILD", "really badly stiff, SEVERE", "maybe stiff, MILD", "stiff," })
	void readsHowBadItWas(String text, Severity severity) {
		assertThat(sign(walk(text), SignKind.STIFFNESS).severity()).isEqualTo(severity);
	}

	@ParameterizedTest
	@CsvSource({ "stiff at the start, START", "stiff on the way home, END", "stiff half way round, MIDDLE",
			"stiff when we got home, AFTER", "stiff last night, NIGHT", "stiff this evening, EVENING" })
	void readsWhenItWas(String text, Moment moment) {
		assertThat(sign(walk(text), SignKind.STIFFNESS).when()).isEqualTo(moment);
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|',
			value = { "25 mins, slowed up after about 15 | 15", "30 min, slowed the last five minutes | 25",
					"20 mins, slow straight away | 0", "30 min, slow from half way | 15",
					"left 7.10 back 7.35, slow by 7.30 | 20" })
	void readsAfterHowManyMinutesItBegan(String text, double minute) {
		assertThat(sign(walk(text), SignKind.SLOWING).onsetMinute()).isEqualTo(minute);
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', value = { "stiff for 10 minutes | 10", "stiff, gone after 5 min | 5",
			"took a good half hour to loosen up, stiff | 30" })
	void readsHowLongStiffnessTookToEase(String text, double minutes) {
		Reading reading = read(Question.MORNING, text);
		assertThat(reading.stiffMinutes()).isEqualTo(minutes);
		assertThat(reading.walks()).isEmpty();
	}

	@ParameterizedTest
	@ValueSource(strings = { "Caminó media hora y estaba bien", "Fe gerddodd hi am ugain munud", "qwerty 12",
			"今日は20分歩きました", "🐶🐾🐾", "asdkjfhh", "Wir sind zwanzig Minuten gelaufen, alles prima", "later" })
	void saysWhenNothingCanBeRead(String text) {
		Reading reading = walk(text);
		assertThat(reading.understood()).isFalse();
		assertThat(reading.walks()).isEmpty();
		assertThat(reading.signs()).isEmpty();
	}

	@ParameterizedTest
	@ValueSource(strings = { "??", "when is his next appointment", "unsubscribe", "can I give her an aspirin" })
	void understandsSideMattersWithoutFacts(String text) {
		Reading reading = read(Question.ANY, text);
		assertThat(reading.understood()).isTrue();
		assertThat(reading.signs()).isEmpty();
		assertThat(reading.level()).isEqualTo(Level.NONE);
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', value = { "my husband walked her, 25 minutes and no limp | lameness | false",
			"Jean took him, she says he stumbled | stumbling | true", "Steve had her out, no limp | lameness | false",
			"I was watching for limping and there wasn't any | lameness | false", "limping nil | lameness | false",
			"stiffness none, appetite good | stiffness | false", "there was know limp | lameness | false",
			"not one limp | lameness | false", "the limp came back | lameness | true",
			"stiff, resolved in approx. 12 minutes | stiffness | true", "knee not swollen, not hot | swelling | false",
			"he retched with nothing coming up and his tummy is tight | abdominal-distension | true" })
	void whoSaysItAndHowItIsDeniedMakesTheSign(String text, String sign, boolean present) {
		assertThat(walk(text).signs())
			.anySatisfy((each) -> assertThat(each.kind().code() + each.present()).isEqualTo(sign + present));
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|',
			value = { "first one ten minutes second one fifteen minutes | 10 15",
					"twenty minutes morning and evening | 20 20", "did a half our | 30",
					"she lay down half way round the 20 | 20", "lame for the first minute, 25 in all | 25" })
	void walksAreToldApartAsTheyAreSpoken(String text, String minutes) {
		assertThat(walk(text).walks()).extracting((walk) -> String.valueOf(Math.round(walk.minutes())))
			.containsExactly(minutes.split(" "));
	}

	@Test
	void tellsACorrectionWithBothNumbers() {
		assertThat(walk("no, 15 not 50").correction()).isEqualTo(new Correction(15.0, 50.0, null, null, null));
	}

	@Test
	void tellsACorrectionOfTheSideOnly() {
		assertThat(walk("sorry, meant left").correction()).isEqualTo(new Correction(null, null, null, Side.LEFT, null));
	}

	@Test
	void datesAWalkOfAnotherDayByTheMessagesOwnTime() {
		assertThat(walk("on Tuesday we did 20 minutes").walks()).singleElement()
			.extracting(WalkTold::date)
			.isEqualTo(LocalDate.of(2026, 3, 10));
		assertThat(walk("20 minutes, better than Tuesday").walks()).singleElement().extracting(WalkTold::date).isNull();
	}

	@Test
	void asksBackWhenAWalkIsLongerThanIsLikely() {
		AskBack askBack = walk("240 minutes").askBack();
		assertThat(askBack).isEqualTo(new AskBack("walks[0].minutes", java.util.List.of("240 minutes", "24 minutes")));
	}

	@Test
	void dropsADistanceThatNoDogWalksInThatTime() {
		Reading reading = walk("10km in 20 mins");
		assertThat(reading.walks().get(0).minutes()).isEqualTo(20);
		assertThat(reading.walks().get(0).distanceMetres()).isNull();
		assertThat(reading.unsure()).containsExactly("walks[0].distanceMetres");
	}

	@Test
	void listsASignThatTheOwnerIsNotSureOf() {
		assertThat(walk("20 mins, I think she was limping").unsure()).containsExactly("signs[0]");
	}

	@ParameterizedTest
	@CsvSource({ "yes, YES", "yep, YES", "nope, NO", "no thanks, NO", "not sure, UNSURE" })
	void readsABareAnswer(String text, Answer answer) {
		assertThat(read(Question.ANY, text).answer()).isEqualTo(answer);
	}

	@Test
	void seesThatThereWasNoWalk() {
		assertThat(walk("no walk, visitors all day").noWalk()).isTrue();
		assertThat(walk("no limp, 20 min").noWalk()).isFalse();
	}

}
