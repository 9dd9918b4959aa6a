package measuredwalk.reading.gloss;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

class GlossaryTests {

	private static final Glossary SPANISH = Glossary.of("es", (word) -> false);

	private final Endings endings = new Endings(
			GlossaryFile.of("endings.txt", List.of("ar: ar o a", "o: o a", "ar c+e => qu+e", "dar = doy dio")));

	private static String spanish(String text) {
		return SPANISH.gloss(text, List.of("Luna")).text().replaceAll(" +", " ");
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|',
			value = { "veinte minutos|20 minutes", "treinta y cinco minutos|35 minutes", "media hora|half an hour",
					"hora y media|90 minutes", "un cuarto de hora|a quarter of an hour", "1,5 km|1.5 km",
					"1.500 metros|1500 metres", "de 8 a 8:20|from 8 to 8:20", "dos paseos de 15|2 walks of 15 minutes",
					"entre 10 y 15 minutos|10 to 15 minutes", "a las 8 y media|at 8:30", "no cojeó|not limped",
					"NO COJEO|not limped", "Luna cojea|Luna limped", "¿cojea?|limped?" })
	void phrasesBecomeTheEnglishOfTheRules(String text, String english) {
		assertThat(spanish(text)).isEqualTo(english);
	}

	@Test
	void wordsThatItDoesNotKnowAreLeftOutAndCounted() {
		Gloss gloss = SPANISH.gloss("xyzzy plugh cojea", List.of());
		assertThat(gloss.text()).isEqualTo("limped");
		assertThat(gloss.unknown()).isEqualTo(2);
		assertThat(gloss.isUnderstood()).isFalse();
	}

	@Test
	void formsComeFromTheEndingsOfTheLanguage() {
		assertThat(this.endings.of("saltar")).contains("saltar", "salto", "salta");
		assertThat(this.endings.of("dar")).contains("doy", "dio");
		assertThat(this.endings.of("cojo")).contains("coja");
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|',
			value = { "cojea|has no English", "cojea => limped $1|asks for more than the phrase keeps",
					"<nope> cojea => limped|class <nope> is not known",
					".. cojea => limped|no word of its own to begin with" })
	void aWrongLineIsNamedWithFileAndFix(String line, String complaint) {
		GlossaryParser parser = new GlossaryParser(this.endings);
		GlossaryFile file = GlossaryFile.of("es/test.txt", List.of("# a comment", line));
		assertThatIllegalStateException().isThrownBy(() -> parser.parse(file))
			.withMessageContaining("es/test.txt, line 2")
			.withMessageContaining(complaint);
	}

	@Test
	void aGlanceTellsSpanishFromEnglish() {
		OwnWords own = new OwnWords(Glossary.of("es", List.of("no", "come", "me", "the", "she", "a")::contains));
		assertThat(own.areIn("mi perra no se levanta")).isTrue();
		assertThat(own.areIn("Cojeó")).isTrue();
		assertThat(own.areIn("she would not come to me")).isFalse();
	}

}
