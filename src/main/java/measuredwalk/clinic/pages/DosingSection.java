package measuredwalk.clinic.pages;

import java.util.List;

/**
 * Numbers of the dosing rule that belong together; public for the templates only.
 *
 * @param code the group's name in the address of its place
 * @param name its name on the page
 * @param about what it is about
 * @param lines the numbers, at least one
 */
public record DosingSection(String code, String name, String about, List<DosingLine> lines) {

	public DosingSection {
		lines = List.copyOf(lines);
	}

}
