package measuredwalk.pictures;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;

import measuredwalk.speech.Speaking;
import measuredwalk.speech.Speech;
import measuredwalk.speech.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

class PictureTests {

	static Stream<Arguments> all() {
		Map<String, Picture> pictures = Map.of("fortnight", FortnightPicture.of("Thistle", SampleDays.of(14)),
				"fortnight-in-spanish", spanish(), "fortnight-of-a-long-name",
				FortnightPicture.of("Thistledown Bellamorrigan of the Long Water Meadows", SampleDays.of(9)),
				"timeline-wide", TimelinePicture.of("Thistle", SampleDays.of(42), 760), "timeline-phone",
				TimelinePicture.of("Thistle", SampleDays.of(42), 346), "timeline-half-year",
				TimelinePicture.of("Thistle", SampleDays.of(182), 760), "trend",
				TrendPicture.of("Thistle", SampleDays.trend(28), SampleDays.FIRST.plusDays(26)));
		return pictures.entrySet().stream().map((each) -> Arguments.of(each.getKey(), each.getValue()));
	}

	private static Picture spanish() {
		return Speaking.as(new Speech("es", Units.KILOMETRES, false),
				() -> FortnightPicture.of("Thistle", SampleDays.of(14)));
	}

	@Test
	void anOwnersPictureSpeaksTheHouseholdsLanguageWheneverItIsDrawn() {
		Picture picture = spanish();
		assertThat(picture.summary()).startsWith("Thistle, del dom 1 feb al sáb 14 feb: paseos contados en 12 de 14");
		assertThat(picture.svg())
			.contains("Thistle: dos semanas de paseos", "minutos de paseo cada día", "mañana rígida o peor")
			.doesNotContain("walk");
	}

	@Test
	void theWordsOfAnOwnersPictureAndRecordAreTheSameInEachLanguage() {
		assertThat(List.of("measuredwalk.pictures.fortnight", "measuredwalk.records.words")).allSatisfy((name) -> {
			ResourceBundle usual = ResourceBundle.getBundle(name, Locale.ROOT);
			ResourceBundle spanish = ResourceBundle.getBundle(name, Locale.forLanguageTag("es"));
			assertThat(usual.keySet()).allSatisfy((key) -> assertThat(places(spanish.getString(key))).as(key)
				.isEqualTo(places(usual.getString(key))));
		});
	}

	private static Set<String> places(String words) {
		return Pattern.compile("\\{\\d").matcher(words).results().map(MatchResult::group).collect(Collectors.toSet());
	}

	@ParameterizedTest(name = "{0}")
	@MethodSource("all")
	void aPngHasItsSizeAtTheScaleAndIsNotEmpty(String name, Picture picture) throws IOException {
		byte[] png = picture.png(2);
		Path folder = Files.createDirectories(Path.of("target", "pictures"));
		Files.write(folder.resolve(name + ".png"), png);
		Files.writeString(folder.resolve(name + ".svg"), picture.svg());
		BufferedImage image = ImageIO.read(new ByteArrayInputStream(png));
		assertThat(image.getWidth()).isEqualTo(2 * picture.width());
		assertThat(image.getHeight()).isEqualTo(2 * picture.height());
		assertThat(Stream.iterate(0, (x) -> x + 1)
			.limit(image.getWidth())
			.flatMap((x) -> Stream.iterate(0, (y) -> y + 1).limit(image.getHeight()).map((y) -> image.getRGB(x, y)))
			.distinct()
			.count()).as("colours").isGreaterThan(20);
	}

	@ParameterizedTest(name = "{0}")
	@MethodSource("all")
	void anSvgIsWholeXmlThatNamesItselfAndHoldsNothingActive(String name, Picture picture) throws Exception {
		Document svg = DocumentBuilderFactory.newInstance()
			.newDocumentBuilder()
			.parse(new ByteArrayInputStream(picture.svg().getBytes(StandardCharsets.UTF_8)));
		assertThat(svg.getDocumentElement().getAttribute("role")).isEqualTo("img");
		assertThat(svg.getDocumentElement().getAttribute("aria-label")).isEqualTo(picture.summary());
		assertThat(picture.svg()).doesNotContain("style=", "<script", "href");
	}

	@ParameterizedTest(name = "{0}")
	@MethodSource("all")
	void noMarkStandsOutsideThePicture(String name, Picture picture) {
		Extent extent = new Extent();
		picture.drawOn(extent);
		assertThat(extent.leftmost()).isGreaterThanOrEqualTo(0);
		assertThat(extent.rightmost()).isLessThanOrEqualTo(picture.width());
		assertThat(extent.lowest()).isLessThanOrEqualTo(picture.height());
	}

	@Test
	void aNameCannotBreakOutOfTheSvg() {
		String svg = FortnightPicture.of("<script>\"&\u0007", SampleDays.of(3)).svg();
		assertThat(svg).doesNotContain("<script>").contains("&lt;script&gt;&quot;&amp; ");
	}

	@Test
	void theFortnightSaysInWordsWhatItShows() {
		Picture picture = FortnightPicture.of("Thistle", SampleDays.of(14));
		assertThat(picture.summary()).isEqualTo("Thistle, Sun 1 Feb to Sat 14 Feb: walks told of on 12 of 14 days,"
				+ " 309 minutes in all where 311 were suggested on those days; signs on 3 days; 2 stiff or worse mornings.");
		assertThat(picture.lines()).hasSize(14)
			.contains("Wed 4 Feb: walked 25 of 25 minutes suggested; slowing, mild; stiff or worse morning",
					"Thu 5 Feb: no walk told, 25 minutes suggested; some signs in the morning");
		assertThat(picture.lines()).noneMatch((line) -> line.contains("walked 0"));
	}

	@Test
	void theTimelineSaysInWordsWhatItShows() {
		Picture picture = TimelinePicture.of("Thistle", SampleDays.of(14), 760);
		assertThat(picture.summary()).startsWith("Thistle, Sun 1 Feb to Sat 14 Feb: 24 walks told of, 3 with signs;"
				+ " 2 of 12 mornings told of were worse; suggested walk 12 to 14 minutes; tolerance median 19 minutes");
		assertThat(picture.lines().get(0)).isEqualTo("Sun 1 Feb: suggested 2 x 12 min, tolerance 18 (8 to 42);"
				+ " walk 11 min; walk 11 min; morning clear; plan 2 walks of 12 min; nsaid given already");
	}

	@Test
	void theTrendSaysHowTheLastWeekDiffers() {
		Picture picture = TrendPicture.of("Thistle", SampleDays.trend(28), SampleDays.FIRST.plusDays(26));
		assertThat(picture.summary()).contains("mean sign grade 2.0 in the last 7 days told of and 0.2");
	}

	@Test
	void aCourseWithoutDaysStillIsAPicture() {
		assertThat(TimelinePicture.of("Thistle", List.of(), 346).svg()).contains("nothing is known yet");
		assertThatThrownBy(() -> FortnightPicture.of("Thistle", List.of()))
			.isInstanceOf(IllegalArgumentException.class);
	}

}
