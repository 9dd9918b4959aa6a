package measuredwalk.reading;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

import measuredwalk.signs.Sign;
import measuredwalk.signs.SignKind;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;

import static org.assertj.core.api.Assertions.assertThat;

class ReadingPropertiesTests {

	private static final MessageReader READER = MessageReader.standard();

	private static Reading read(String text) {
		return READER.read(new OwnerMessage(text, Question.WALK, LocalDateTime.of(2026, 3, 14, 18, 30), "Bracken",
				Set.of("nsaid")));
	}

	private static Set<SignKind> present(Reading reading) {
		return reading.signs().stream().filter(Sign::present).map(Sign::kind).collect(Collectors.toSet());
	}

	@Property(tries = 500)
	void noTextMakesItThrow(@ForAll String text) {
		assertThat(read(text).walks()).isNotNull();
	}

	@Property(tries = 200)
	void aDeniedSignAddsNoPresentOne(@ForAll("remarks") String remark, @ForAll("signs") String sign) {
		assertThat(present(read(remark + ". No " + sign + "."))).isEqualTo(present(read(remark + ".")));
	}

	@Property(tries = 200)
	void chatAroundDoesNotChangeTheAmount(@ForAll @IntRange(min = 3, max = 170) int minutes,
			@ForAll("chat") String before, @ForAll("chat") String after) {
		assertThat(read(before + ". " + minutes + " minutes. " + after).walks()).singleElement()
			.extracting(WalkTold::minutes)
			.isEqualTo((double) minutes);
	}

	@Property(tries = 100)
	void chatAroundDoesNotHideAnEmergency(@ForAll("emergencies") String emergency, @ForAll("chat") String before,
			@ForAll("chat") String after) {
		assertThat(read(before + ". " + emergency + ". " + after).level()).isEqualTo(Level.EMERGENCY);
	}

	@Provide
	Arbitrary<String> remarks() {
		return Arbitraries.of("20 minutes", "a bit stiff", "she was limping", "lovely walk", "slow on the way home");
	}

	@Provide
	Arbitrary<String> signs() {
		return Arbitraries.of("limping", "stiffness", "panting", "swelling", "trembling", "vomiting", "dragging");
	}

	@Provide
	Arbitrary<String> chat() {
		return Arbitraries.of("Lovely weather today", "Thanks for asking", "We met my sister", "Haha",
				"The garden is full of snowdrops", "Busy day here");
	}

	@Provide
	Arbitrary<String> emergencies() {
		return Arbitraries.of("He collapsed", "She can't get up", "Gums are white", "He had a seizure",
				"She is struggling to breathe", "Back legs gave way");
	}

	@Property(tries = 20)
	void everyPartOfALongMessageIsRead(@ForAll @IntRange(min = 1, max = 40) int sentences) {
		String text = "He sniffed the hedges for a while and was happy. ".repeat(sentences * 10) + "Then he collapsed.";
		assertThat(present(read(text))).isEqualTo(Set.copyOf(List.of(SignKind.COLLAPSE)));
	}

}
