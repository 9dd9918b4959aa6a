package measuredwalk.clinic.pages;

import java.util.List;

/**
 * Rules that belong together; public for the templates only.
 *
 * @param code its name in the address of its place
 * @param name its name on the page
 * @param about what the rules are about
 * @param lines the rules
 */
public record RuleSection(String code, String name, String about, List<RuleLine> lines) {

	public RuleSection {
		lines = List.copyOf(lines);
	}

}
