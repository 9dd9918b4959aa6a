package measuredwalk.reading.words;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static org.assertj.core.api.Assertions.assertThat;

class SpellerTests {

	private static final Speller SPELLER = new Speller(
			List.of("limping", "stiff", "minutes", "vomiting", "collapsed", "not", "now", "panting"));

	@ParameterizedTest
	@CsvSource({ "limpnig, limping", "stif, stiff", "mintues, minutes", "vomitting, vomiting", "colapsed, collapsed",
			"nto, not", "pantign, panting" })
	void repairsTheUsualSlips(String typed, String meant) {
		assertThat(SPELLER.repaired(typed)).isEqualTo(meant);
	}

	@ParameterizedTest
	@CsvSource({ "xy", "quokka", "nut", "lumpfish" })
	void leavesWhatIsNotNear(String typed) {
		assertThat(SPELLER.repaired(typed)).isNull();
	}

	@Test
	void aNeighbouringKeyCostsLessThanAFarOne() {
		assertThat(SlipCost.of("lomp", "limp", 9)).isLessThan(SlipCost.of("lzmp", "limp", 9));
	}

}
