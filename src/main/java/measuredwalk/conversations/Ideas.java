package measuredwalk.conversations;

import java.util.List;

import org.jspecify.annotations.Nullable;

/** What to do with a dog that walks less for some days: {@code ideas.yaml}. */
public final class Ideas {

	private static final String FILE = "ideas.yaml";

	private static final String KEY = "ideas";

	/** About two lines on a small telephone. */
	private static final int LONGEST = 160;

	private final InEachLanguage<List<String>> ideas;

	private Ideas(InEachLanguage<List<String>> ideas) {
		this.ideas = ideas;
	}

	static Ideas read(ConversationFiles files) {
		return new Ideas(InEachLanguage.read(files, (own) -> list(own.file(FILE))));
	}

	static Ideas read(YamlMap file) {
		return new Ideas(InEachLanguage.only(list(file)));
	}

	/** With one idea alone, the same would come twice in a row. */
	private static List<String> list(YamlMap file) {
		List<String> ideas = file.textsOfAtMost(KEY, LONGEST);
		if (ideas.stream().distinct().count() != ideas.size() || ideas.size() < 2) {
			throw file.problemAt(KEY, "there must be at least two ideas, and no two the same.");
		}
		file.noOtherKeys();
		return ideas;
	}

	/**
	 * All ideas.
	 * @return in the order of the file
	 */
	public List<String> ideas() {
		return this.ideas.now();
	}

	/**
	 * The idea whose turn it is.
	 * @param last the one before, or null
	 * @return the next one, and after the last one the first again
	 */
	public String after(@Nullable String last) {
		int before = (last != null) ? ideas().indexOf(last) : -1;
		return ideas().get((before + 1) % ideas().size());
	}

}
