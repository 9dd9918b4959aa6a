package measuredwalk.care;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static org.assertj.core.api.Assertions.assertThat;

class DogWordsTests {

	private static final List<String> NAMES = List.of("Moss", "Tarn");

	private final DogWords words = new DogWords(NAMES);

	private Map<String, String> of(String text) {
		Map<String, String> byName = new TreeMap<>();
		this.words.of(text).forEach((dog, said) -> byName.put(NAMES.get(dog), said));
		return byName;
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', nullValues = "-",
			textBlock = """
					both did 20, Tarn was stiff              | Moss did 20,                       | Tarn did 20, Tarn was stiff
					Tarn did 20, Moss 15                     | Moss 15                            | Tarn did 20,
					Tarn did 20 and Moss 15                  | and Moss 15                        | Tarn did 20
					20 for Tarn and 15 for Moss              | 15 for Moss                        | 20 for Tarn and
					20 for Tarn 15 for Moss                  | 15 for Moss                        | 20 for Tarn
					Tarn 20 Moss 15                          | Moss 15                            | Tarn 20
					Tarn and Moss did 20                     | Moss did 20                        | Tarn did 20
					Tarn, Moss: 20 mins                      | Moss: 20 mins                      | Tarn: 20 mins
					all good. Tarn 20 mins. Moss was lame    | all good. Moss was lame            | all good. Tarn 20 mins.
					the dogs were out for 20                 | Moss were out for 20               | Tarn were out for 20
					tarn was stiff                           | -                                  | Tarn was stiff
					25 mins round the field, Tarn slowed up  | -                                  | 25 mins round the field, Tarn slowed up
					Tarn limped after playing with Moss      | the other dog limped after playing with Moss | Tarn limped after playing with the other dog
					both fine apart from Tarn, who was stiff | Moss fine                          | Tarn fine apart from Tarn, who was stiff
					Tarn's back legs shook, both legs        | -                                  | Tarn back legs shook, both legs
					Moss did 1.5 miles, then she sat down    | Moss did 1.5 miles, then she sat down | -
					""")
	void eachClauseIsOfTheDogsThatItNames(String text, String ofMoss, String ofTarn) {
		assertThat(of(text).get("Moss")).isEqualTo(ofMoss);
		assertThat(of(text).get("Tarn")).isEqualTo(ofTarn);
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', textBlock = """
			20 minutes, she was stiff
			stiff on both back legs
			she pulled me through the moss
			both walks were fine
			""")
	void whatNamesNoDogIsOfNone(String text) {
		assertThat(of(text)).isEmpty();
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', textBlock = """
			Tarn             | [1]
			it was Moss      | [0]
			Both of them     | [0, 1]
			moss and tarn.   | [0, 1]
			Moss did 20      | []
			yes              | []
			""")
	void anAnswerToWhichDogHoldsNothingButDogs(String text, String dogs) {
		assertThat(new DogNames(NAMES).only(text)).hasToString(dogs);
	}

	@Test
	void threeDogsMayBeNamedInOneRow() {
		DogWords three = new DogWords(List.of("Fern", "Moss", "Tarn"));
		assertThat(three.of("Fern, Moss and Tarn did 20").values()).containsExactly("Fern did 20", "Moss did 20",
				"Tarn did 20");
	}

}
