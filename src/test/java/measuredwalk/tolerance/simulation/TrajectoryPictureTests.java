package measuredwalk.tolerance.simulation;

import java.io.StringReader;

import javax.xml.parsers.DocumentBuilderFactory;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;

import static org.assertj.core.api.Assertions.assertThat;

class TrajectoryPictureTests {

	@ParameterizedTest
	@EnumSource(names = { "STEADY", "STRONG_STOIC" })
	void aPictureIsWellFormedSaysWhatItShowsAndStaysWithinItsFrame(Kind kind) throws Exception {
		Document picture = DocumentBuilderFactory.newInstance()
			.newDocumentBuilder()
			.parse(new InputSource(new StringReader(ToleranceTrajectories.picture(kind, new CarelessFilter()))));
		assertThat(text(picture, "title")).contains(kind.name().toLowerCase(java.util.Locale.ROOT).replace('_', ' '));
		assertThat(text(picture, "desc")).contains("180 days");
		assertThat(picture.getDocumentElement().getAttribute("viewBox")).isEqualTo("0 0 360 280");
		for (int path = 0; path < picture.getElementsByTagName("path").getLength(); path++) {
			String data = ((Element) picture.getElementsByTagName("path").item(path)).getAttribute("d");
			assertThat(data.split("[MLHZhvz ]+")).filteredOn((word) -> !word.isEmpty())
				.allSatisfy((word) -> assertThat(Double.parseDouble(word)).isBetween(-18.0, 360.0));
		}
	}

	private static String text(Document picture, String element) {
		return picture.getElementsByTagName(element).item(0).getTextContent();
	}

}
