package measuredwalk.conversations;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

import measuredwalk.signs.Coded;
import measuredwalk.signs.SignKind;

/** The signs that one can learn to see: the lessons of {@code looking.yaml}. */
public final class LookingGuide {

	private static final String FILE = "looking.yaml";

	/** About two lines on a small telephone. */
	private static final int LONGEST_LINE = 140;

	/** More is cut short on a button of a small telephone. */
	private static final int LONGEST_TITLE = 30;

	private final InEachLanguage<List<Lesson>> lessons;

	private LookingGuide(InEachLanguage<List<Lesson>> lessons) {
		this.lessons = lessons;
	}

	static LookingGuide read(ConversationFiles files) {
		return new LookingGuide(InEachLanguage.read(files, (own) -> list(own.file(FILE))));
	}

	static LookingGuide read(YamlMap file) {
		return new LookingGuide(InEachLanguage.only(list(file)));
	}

	private static List<Lesson> list(YamlMap file) {
		List<YamlMap> maps = file.maps("lessons");
		List<Lesson> lessons = maps.stream().map(LookingGuide::lesson).toList();
		for (int index = 0; index < lessons.size(); index++) {
			SignKind sign = lessons.get(index).sign();
			if (lessons.subList(0, index).stream().anyMatch((earlier) -> earlier.sign() == sign)) {
				throw maps.get(index).problemAt("sign", "there are two lessons for '" + sign.code() + "'; keep one.");
			}
		}
		file.noOtherKeys();
		return List.copyOf(lessons);
	}

	private static Lesson lesson(YamlMap map) {
		Lesson lesson = new Lesson(sign(map), map.textOfAtMost("title", LONGEST_TITLE),
				map.textOfAtMost("how", LONGEST_LINE), map.textOfAtMost("where", LONGEST_LINE),
				map.textOfAtMost("when", LONGEST_LINE), map.textOfAtMost("drawing", LONGEST_LINE));
		map.noOtherKeys();
		return lesson;
	}

	private static SignKind sign(YamlMap map) {
		try {
			return Coded.of(SignKind.class, map.text("sign"));
		}
		catch (IllegalArgumentException ex) {
			throw map.problemAt("sign", ex.getMessage() + ".");
		}
	}

	/**
	 * All lessons.
	 * @return in the order of the file
	 */
	public List<Lesson> lessons() {
		return this.lessons.now();
	}

	/**
	 * Whether there is a lesson for a sign.
	 * @param sign the sign
	 * @return true when there is
	 */
	public boolean teaches(SignKind sign) {
		return lessons().stream().anyMatch((lesson) -> lesson.sign() == sign);
	}

	/**
	 * The lesson whose button was pressed.
	 * @param text what was written
	 * @return the lesson, or empty when the text is no lesson's title
	 */
	public Optional<Lesson> titled(String text) {
		return first((lesson) -> lesson.titled(text));
	}

	/**
	 * The first lesson whose title holds some words.
	 * @param words the words, such as {@code slowing}
	 * @return the lesson, or empty
	 */
	public Optional<Lesson> about(String words) {
		return first((lesson) -> lesson.about(words));
	}

	private Optional<Lesson> first(Predicate<Lesson> wanted) {
		return lessons().stream().filter(wanted).findFirst();
	}

}
