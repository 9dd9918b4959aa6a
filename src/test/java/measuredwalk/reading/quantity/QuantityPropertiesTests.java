package measuredwalk.reading.quantity;

import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.util.List;

import measuredwalk.reading.Tokeniser;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.StringLength;
import org.assertj.core.data.Offset;

import static org.assertj.core.api.Assertions.assertThat;

class QuantityPropertiesTests {

	private static final LocalDateTime NOW = LocalDateTime.of(2026, 3, 14, 18, 30);

	private static final List<String> CHAT = List.of("lovely day, ", "went round the field ", "hi there! ",
			"Bracken was keen, ", "muddy again 🐾 ", "the usual loop ");

	@Property(tries = 180, seed = "1")
	void figuresAndWordsAgree(@ForAll @IntRange(min = 1, max = 180) int minutes) {
		double figures = seconds(minutes + " min");
		double words = seconds(NumberInWords.of(minutes) + " minutes");
		assertThat(figures).isEqualTo(minutes * 60.0);
		assertThat(words).isEqualTo(figures);
	}

	@Property(seed = "2")
	void hoursAndMinutesAreTheSumOfBoth(@ForAll @IntRange(min = 1, max = 9) int hours,
			@ForAll @IntRange(min = 10, max = 59) int minutes) {
		double expected = hours * 3600.0 + minutes * 60.0;
		assertThat(seconds(hours + " hours " + minutes + " minutes")).isEqualTo(expected);
		assertThat(seconds(hours + "h" + minutes)).isEqualTo(expected);
		assertThat(seconds(NumberInWords.of(hours) + " hours and " + NumberInWords.of(minutes))).isEqualTo(expected);
	}

	@Property(seed = "3")
	void aLengthIsTheSameInEveryUnit(@ForAll @IntRange(min = 1, max = 30_000) int metres) {
		assertThat(metres(plain(metres / 1000.0) + " km")).isCloseTo(metres, Offset.offset(0.001));
		assertThat(metres(plain(metres / 1609.344) + " miles")).isCloseTo(metres, Offset.offset(0.001));
		assertThat(metres(plain(metres / 0.9144) + " yards")).isCloseTo(metres, Offset.offset(0.001));
		assertThat(metres(plain(metres / 0.3048) + " feet")).isCloseTo(metres, Offset.offset(0.001));
	}

	@Property(seed = "4")
	void aRangeKeepsItsEnds(@ForAll @IntRange(min = 1, max = 90) int low,
			@ForAll @IntRange(min = 1, max = 60) int more) {
		int high = low + more;
		for (String text : List.of(low + "-" + high + " mins", low + " to " + high + " minutes",
				"between " + low + " and " + high + " mins")) {
			Amount amount = onlyDuration(text).seconds();
			assertThat(amount.low()).as(text).isEqualTo(low * 60.0);
			assertThat(amount.high()).as(text).isEqualTo(high * 60.0);
			assertThat(amount.value()).as(text).isEqualTo((low + high) * 30.0);
		}
	}

	@Property(seed = "5")
	void chatAroundItDoesNotChangeTheAmount(@ForAll @IntRange(min = 1, max = 180) int minutes,
			@ForAll @IntRange(min = 0, max = 5) int before, @ForAll @IntRange(min = 0, max = 5) int after) {
		String text = CHAT.get(before) + minutes + " mins, " + CHAT.get(after);
		assertThat(seconds(text)).as(text).isEqualTo(minutes * 60.0);
	}

	@Property(seed = "6", tries = 2000)
	void noTextIsTooStrange(@ForAll @StringLength(max = 200) String text) {
		assertThat(Quantities.readings(Tokeniser.tokens(text), NOW)).isNotNull();
	}

	@Example
	void aTextOfTwentyThousandFiguresIsNoAmount() {
		assertThat(Quantities.in(Tokeniser.tokens("1".repeat(20_000)), NOW)).isEmpty();
	}

	@Property(seed = "7", tries = 3000)
	void wordsOfTheGrammarInAnyOrderAreReadInOrder(@ForAll List<@IntRange(min = 0, max = PIECES_LAST) Integer> pieces) {
		String text = String.join(" ", pieces.stream().map((piece) -> PIECES[piece]).toList());
		int end = -1;
		for (Quantity quantity : Quantities.in(Tokeniser.tokens(text), NOW)) {
			assertThat(quantity.span().start()).as(text).isGreaterThanOrEqualTo(end);
			assertThat(quantity.span().end()).as(text).isGreaterThan(quantity.span().start());
			end = quantity.span().end();
		}
	}

	private static final String[] PIECES = { "half", "a", "quarter", "to", "past", "10", "25", "ten", "twenty", "five",
			"min", "hours", "mile", "and", "-", "/", "x", "of", "from", "between", "at", "about", "less than", "or so",
			"7:10", "7.10", "am", "'", "\"", "in the morning", "£", "%", "+", "hundred", "third", "May", "the", "2",
			"k", "out of", "point", "few", "twice", "back", "left", "^" };

	private static final int PIECES_LAST = 45;

	private static double seconds(String text) {
		return onlyDuration(text).seconds().value();
	}

	private static Duration onlyDuration(String text) {
		List<Quantity> found = Quantities.in(Tokeniser.tokens(text), NOW);
		assertThat(found).as(text).singleElement().isInstanceOf(Duration.class);
		return (Duration) found.get(0);
	}

	private static String plain(double value) {
		return BigDecimal.valueOf(value).toPlainString();
	}

	private static double metres(String text) {
		List<Quantity> found = Quantities.in(Tokeniser.tokens(text), NOW);
		assertThat(found).as(text).singleElement().isInstanceOf(Distance.class);
		return ((Distance) found.get(0)).metres().value();
	}

}
