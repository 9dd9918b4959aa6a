package measuredwalk.reading.fuzz;

import java.lang.management.ManagementFactory;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

import com.sun.management.ThreadMXBean;
import measuredwalk.reading.MessageReader;
import measuredwalk.reading.OwnerMessage;
import measuredwalk.reading.Question;
import measuredwalk.reading.Reading;
import measuredwalk.reading.WalkTold;
import measuredwalk.reading.quantity.NumberInWords;
import measuredwalk.signs.Sign;
import measuredwalk.signs.SignKind;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;

import static org.assertj.core.api.Assertions.assertThat;

/** What is said in another way, or with other things around it, is read the same. */
class SameMeaningPropertiesTests {

	private static final MessageReader READER = MessageReader.standard();

	private static final int SHORT = 5_000;

	private static final int LONG = 20_000;

	/** Four times the text may cost this many times the work; a square would cost 16. */
	private static final double MOST_GROWTH = 6;

	private static Reading read(String text) {
		return READER.read(new OwnerMessage(text, Question.WALK, LocalDateTime.of(2026, 3, 14, 18, 30), "Bracken",
				Set.of("nsaid")));
	}

	private static Set<SignKind> present(Reading reading) {
		return reading.signs().stream().filter(Sign::present).map(Sign::kind).collect(Collectors.toSet());
	}

	@Property(tries = 150)
	void anyTextOfAnyScriptIsReadSoundly(@ForAll("anything") String text) {
		SoundReading.check(text);
	}

	@Property(tries = 200)
	void figuresAndWordsOfAWalkAgree(@ForAll @IntRange(min = 3, max = 120) int minutes, @ForAll("frames") String frame,
			@ForAll("units") String unit) {
		List<WalkTold> figures = read(String.format(frame, minutes + " " + unit)).walks();
		assertThat(figures).singleElement().extracting(WalkTold::minutes).isEqualTo((double) minutes);
		assertThat(read(String.format(frame, NumberInWords.of(minutes) + " " + unit)).walks()).isEqualTo(figures);
	}

	@Property(tries = 200)
	void hoursAndMinutesOfAWalkConvertBothWays(@ForAll @IntRange(min = 1, max = 2) int hours,
			@ForAll @IntRange(min = 1, max = 59) int minutes, @ForAll("frames") String frame) {
		List<WalkTold> whole = read(String.format(frame, hours * 60 + minutes + " minutes")).walks();
		assertThat(read(String.format(frame, hours + " hours " + minutes + " minutes")).walks()).isEqualTo(whole);
	}

	@Property(tries = 300)
	void numbersOfOtherThingsDoNotChangeTheAmount(@ForAll @IntRange(min = 3, max = 120) int minutes,
			@ForAll("otherNumbers") String before, @ForAll("otherNumbers") String after) {
		String text = before + ". " + minutes + " minutes. " + after + ".";
		assertThat(read(text).walks()).as(text)
			.singleElement()
			.extracting(WalkTold::minutes)
			.isEqualTo((double) minutes);
	}

	@Property(tries = 300)
	void noWayOfDenyingASignAddsAPresentOne(@ForAll("remarks") String remark, @ForAll("denials") String denial,
			@ForAll("signs") String sign) {
		String denied = String.format(denial, sign);
		assertThat(present(read(remark + ". " + denied + "."))).as(denied).isEqualTo(present(read(remark + ".")));
	}

	@Property(tries = 100)
	void capitalsDoNotMatter(@ForAll("remarks") String remark, @ForAll("otherNumbers") String chat) {
		String text = remark + ". " + chat;
		Reading shouted = read(text.toUpperCase(Locale.ROOT));
		assertThat(shouted.walks()).as(text).isEqualTo(read(text).walks());
		assertThat(shouted.signs()).as(text).isEqualTo(read(text).signs());
	}

	@Property(tries = 30)
	void workGrowsInStepWithLength(@ForAll("pieces") String piece) {
		allocated(piece.repeat(SHORT / piece.length()));
		long few = allocated(piece.repeat(SHORT / piece.length()));
		long many = allocated(piece.repeat(LONG / piece.length()));
		assertThat((double) many).as("bytes allocated for '%s'", piece).isLessThan(MOST_GROWTH * few);
	}

	/** Work is counted in bytes allocated, which no other load on the machine changes. */
	private static long allocated(String text) {
		ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
		long before = threads.getCurrentThreadAllocatedBytes();
		assertThat(read(text)).isNotNull();
		return threads.getCurrentThreadAllocatedBytes() - before;
	}

	@Provide
	Arbitrary<String> anything() {
		return Arbitraries.strings().withCharRange('\u0000', '\uffff').ofMaxLength(300);
	}

	@Provide
	Arbitrary<String> frames() {
		return Arbitraries.of("%s", "%s round the field", "we did %s today", "Bracken had %s in the woods",
				"walked for %s, no limp", "about to say she managed %s and was fine");
	}

	@Provide
	Arbitrary<String> units() {
		return Arbitraries.of("min", "mins", "minutes");
	}

	@Provide
	Arbitrary<String> otherNumbers() {
		return Arbitraries.of("He is 12 now", "It cost £48 at the vets", "She weighs 27 kg", "Gave him 2 tablets",
				"It was 4 degrees out", "We live at number 22", "The new dose is 40 mg", "Next visit on 3 May",
				"My sister has 3 dogs", "Only 10% of the bag is left", "Lovely day", "Thanks for asking");
	}

	@Provide
	Arbitrary<String> remarks() {
		return Arbitraries.of("20 minutes", "a bit stiff", "she was limping", "lovely walk", "slow on the way home",
				"25 mins, panting a lot", "he lay down twice", "dragging her back left");
	}

	@Provide
	Arbitrary<String> denials() {
		return Arbitraries.of("No %s", "No sign of %s", "Without any %s", "There was no %s at all", "Not seen any %s",
				"Didn't notice any %s", "I saw no %s today", "Zero %s", "No longer any %s");
	}

	@Provide
	Arbitrary<String> signs() {
		return Arbitraries.of("limping", "stiffness", "panting", "swelling", "trembling", "vomiting", "dragging",
				"lameness", "stumbling", "wobbliness", "soreness", "whining", "restlessness", "diarrhoea", "bleeding",
				"seizures", "coughing up", "knuckling", "retching", "weakness");
	}

	@Provide
	Arbitrary<String> pieces() {
		return Arbitraries.of("no limp and stiff ", "25 minutes, ", "if ", "1", "a", " ", "not ", "twice ", "😀",
				"left 7.10 back 7.35 ", "half an hour and ", "he collapsed. ", "10 or 15 or ", "(", "limpping ",
				"yesterday ", "She can't get up but ");
	}

}
