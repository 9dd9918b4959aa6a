package measuredwalk.conversations;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;

import javax.imageio.ImageIO;

import measuredwalk.signs.SignKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.springframework.core.io.DefaultResourceLoader;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

class LookingGuideTests {

	private static final String GOOD = """
			lessons:
			  - sign: slowing
			    title: How to see slowing
			    how: It drops back.
			    where: From the side.
			    when: When it begins.
			    drawing: A dog.
			""";

	private static final LookingGuide PACKED = LookingGuide
		.read(new ConversationFiles(new DefaultResourceLoader(), ""));

	private static LookingGuide read(String text) {
		return LookingGuide.read(YamlMap.read("looking.yaml", new StringReader(text)));
	}

	static List<Lesson> lessons() {
		return PACKED.lessons();
	}

	@Test
	void itTeachesTheSignsOfAWalkThatIsTooMuch() {
		assertThat(Stream.of(SignKind.LOW_HEAD_CARRIAGE, SignKind.SLOWING, SignKind.HIND_LIMB_DRAGGING,
				SignKind.SITTING_OR_LYING_DOWN, SignKind.STIFFNESS))
			.allMatch(PACKED::teaches);
	}

	@ParameterizedTest
	@MethodSource("lessons")
	void eachLessonHasADrawingThatSaysInItselfWhatTheGuideSaysOfIt(Lesson lesson) throws IOException {
		String path = "/static/signs/" + lesson.sign().code() + ".svg";
		try (InputStream drawing = getClass().getResourceAsStream(path)) {
			assertThat(drawing).as(path).isNotNull();
			assertThat(new String(drawing.readAllBytes(), StandardCharsets.UTF_8)).contains("<title")
				.contains(">" + lesson.drawing() + "</desc>")
				.doesNotContain("<script", "href");
		}
	}

	@ParameterizedTest
	@MethodSource("lessons")
	void eachDrawingIsThereInAFormThatCanBeSent(Lesson lesson) throws IOException {
		try (InputStream drawing = getClass().getResourceAsStream("/static/signs/" + lesson.sign().code() + ".png")) {
			BufferedImage image = ImageIO.read(drawing);
			assertThat(image.getWidth()).isEqualTo(960);
			assertThat(image.getHeight()).isEqualTo(600);
		}
	}

	@ParameterizedTest
	@MethodSource("lessons")
	void aLessonIsAtMostThreeLines(Lesson lesson) {
		assertThat(lesson.text().lines()).hasSizeLessThanOrEqualTo(3);
	}

	@ParameterizedTest
	@MethodSource("lessons")
	void aPressedTitleFindsItsLessonAndNoOther(Lesson lesson) {
		assertThat(PACKED.titled(lesson.title())).contains(lesson);
	}

	@Test
	void anAnswerThatNamesASignIsNoWishForALesson() {
		assertThat(PACKED.titled("slowing")).isEmpty();
		assertThat(PACKED.about("slowing")).get().extracting(Lesson::sign).isEqualTo(SignKind.SLOWING);
		assertThat(PACKED.about("")).isEmpty();
	}

	@ParameterizedTest(name = "{0} -> {1}: {2}")
	@CsvSource(delimiter = '|', quoteCharacter = '"',
			textBlock = """
					sign: slowing   | sign: slowness    | line 2: 'slowness' is not one of
					where:          | wheer:            | 'where' is missing
					It drops back.  | ''                | line 4: here must stand a text
					How to see slowing | How to see that your dog slows down | line 3: 'title' is 35 letters long; shorten it to 30
					""")
	void aWrongGuideIsRefusedWithFileLineAndFix(String good, String wrong, String complaint) {
		assertThatExceptionOfType(ConversationFileProblem.class).isThrownBy(() -> read(GOOD.replace(good, wrong)))
			.withMessageStartingWith("looking.yaml, line ")
			.withMessageContaining(complaint);
	}

	@Test
	void twoLessonsForOneSignAreRefused() {
		String second = GOOD.substring(GOOD.indexOf("  - sign"));
		assertThatExceptionOfType(ConversationFileProblem.class).isThrownBy(() -> read(GOOD + second))
			.withMessageStartingWith("looking.yaml, line 8: there are two lessons for 'slowing'");
	}

}
