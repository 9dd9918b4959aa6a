package measuredwalk.clinic.pages;

import java.time.ZoneId;
import java.util.List;

import measuredwalk.journal.Said;

/**
 * An owner's words on a page; public for the templates only.
 *
 * @param text the words as they were written
 * @param by who wrote them
 * @param at when, in words
 */
public record SaidLine(String text, String by, String at) {

	static List<SaidLine> of(List<Said> said, ZoneId zone) {
		return said.stream()
			.map((each) -> new SaidLine(each.text(), each.by(), Wording.moment(each.at(), zone)))
			.toList();
	}

}
